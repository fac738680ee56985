namespace InspectLog.Measuring.Tests;

/// <summary>Worked budgets of guides on measurement uncertainty, to the digits they print. Their figures are from memory;
/// the arithmetic closes.</summary>
public partial class PublishedBudgetsTests
{
    private static Input Standard(string name, double value, double u) => new(name, value, u);

    private static Input Even(string name, double value, double halfWidth) => new(name, value, Budget.Rectangular(halfWidth));

    // EURACHEM/CITAC QUAM:2012, example A1: 100.28 mg of cadmium, purity 0.9999, in 100.0 ml: 1002.7 mg/l, u 0.9 mg/l.
    [Fact]
    public void Calibration_standard_agrees_with_EURACHEM_A1()
    {
        var estimate = Derived.Of(
            v => 1000 * v[0] * v[1] / v[2],
            [Standard("mass", 100.28, 0.05), Standard("purity", 0.9999, 0.000058), Standard("volume", 100.0, 0.07)]);

        Close.ToDecimals(1002.7, estimate.Value, 1);
        Close.ToDecimals(0.9, estimate.StandardUncertainty, 1);
        Assert.Equal("volume", estimate.Contributions[0].Name);
    }

    // EURACHEM/CITAC QUAM:2012, example A2: sodium hydroxide by titration: 0.10214 mol/l, u 0.00010 mol/l.
    [Fact]
    public void Titration_agrees_with_EURACHEM_A2()
    {
        var estimate = Derived.Of(
            v => 1000 * v[0] * v[1] * v[2] / (v[3] * v[4]),
            [
                Standard("repeatability", 1, 0.0005), Standard("mass", 0.3888, 0.00013), Standard("purity", 1, 0.00029),
                Standard("molar mass", 204.2212, 0.0038), Standard("volume", 18.64, 0.013),
            ]);

        Close.ToDecimals(0.10214, estimate.Value, 5);
        Close.ToDecimals(0.00010, estimate.StandardUncertainty, 5);
    }

    // EA-4/02 S2: a weight of nominal 10 kg: 10 000.025 g, u 29.3 mg, U 59 mg.
    [Fact]
    public void Weight_agrees_with_EA_4_02_S2()
    {
        var estimate = Derived.Of(
            v => v.Sum(),
            [
                Standard("standard, mg", 5, 22.5), Standard("drift", 0, 8.95), Standard("difference", 20, 14.4),
                Even("comparator", 0, 10), Even("buoyancy", 0, 10),
            ]);

        Close.ToDecimals(25, estimate.Value, 9);
        Close.ToDecimals(29.3, estimate.StandardUncertainty, 1);
        Close.ToDecimals(59, estimate.ExpandedUncertainty, 0);
    }

    // EA-4/02 S4: a gauge block of nominal 50 mm, in nm: u 36.4, U 73.
    [Fact]
    public void Gauge_block_agrees_with_EA_4_02_S4()
    {
        var estimate = Derived.Of(
            v => v[0] + v[1] + v[2] + v[3] - (575 * v[4]) + v[5] + v[6],
            [
                Standard("standard", 20, 15), Even("drift", 0, 30), Standard("difference", -94, 5.37),
                Even("comparator", 0, 32), Even("temperature difference, °C", 0, 0.05), Standard("expansion", 0, 11.8),
                Even("off the middle", 0, 6.7),
            ]);

        Close.ToDecimals(-74, estimate.Value, 9);
        Close.ToDecimals(36.4, estimate.StandardUncertainty, 1);
        Close.ToDecimals(73, estimate.ExpandedUncertainty, 0);
    }

    // EA-4/02 S9: a multimeter at 100 V: 0.10 V ± 0.05 V; the display step is nearly all of it, so k is that of a box.
    [Fact]
    public void Multimeter_agrees_with_EA_4_02_S9()
    {
        var estimate = Derived.Of(
            v => v[0] + v[1] - v[2] - v[3],
            [
                Standard("display", 100.1, 0), Even("display step", 0, 0.05), Standard("calibrator", 100.0, 0.001),
                Even("calibrator since", 0, 0.011),
            ]);

        Close.ToDecimals(0.10, estimate.Value, 2);
        Close.ToDecimals(0.030, estimate.StandardUncertainty, 3);
        Close.ToDecimals(1.65, 0.95 * Math.Sqrt(3), 2);
        Close.ToDecimals(0.05, 0.95 * Math.Sqrt(3) * estimate.StandardUncertainty, 2);
        Assert.Equal("display step", estimate.Contributions[0].Name);
    }

    // EA-4/02 S11: a block calibrator at 180 °C: 180.1 °C, u 0.164 °C, U 0.3 °C.
    [Fact]
    public void Block_calibrator_agrees_with_EA_4_02_S11()
    {
        var estimate = Derived.Of(
            v => v.Sum(),
            [
                Standard("standard", 180.1, 0.015), Standard("standard, from its resistance", 0, 0.010), Even("drift", 0, 0.04),
                Even("indicator", 0, 0.05), Even("along the bore", 0, 0.25), Even("radially", 0, 0.10),
                Even("loading", 0, 0.05), Even("with time", 0, 0.03),
            ]);

        Close.ToDecimals(180.1, estimate.Value, 1);
        Close.ToDecimals(0.164, estimate.StandardUncertainty, 3);
        Close.ToDecimals(0.3, estimate.ExpandedUncertainty, 1);
    }

    // A bench meter's manual: ±(0.0020 % of reading + 0.0005 % of range), 5 V on 10 V: 150 µV, 30 ppm. In steps of 10 µV
    // the range's share is five counts.
    [Fact]
    public void Accuracy_in_percent_of_range_is_counts_of_its_steps()
    {
        var halfWidth = new Accuracy(0.0020, 5).HalfWidth(5, 1e-5);

        Close.ToDigits(150e-6, halfWidth, 12);
        Close.ToDigits(30e-6, halfWidth / 5, 12);
    }

    // The same specification, written as the manual does.
    [Fact]
    public void Percent_of_range_is_taken_of_the_full_scale()
    {
        Assert.True(Accuracy.TryParse("0.0020% of reading + 0.0005% of range", QuantityKind.Voltage, out var accuracy, out _));

        Close.ToDigits(150e-6, accuracy.On(10).HalfWidth(5, 1e-5), 12);
        Assert.Throws<ArgumentException>(() => accuracy.HalfWidth(5, 1e-5));
    }

    // JCGM 100:2008, 4.3.7: 14 × 10⁻⁶ of the reading plus 2 × 10⁻⁶ of the range of 1 V, at 0.928571 V: a = 15 µV,
    // u² = 75 µV², u = 8.7 µV. From memory; the arithmetic closes to the printed digits.
    [Fact]
    public void Guide_s_digital_voltmeter_gives_its_half_width_and_uncertainty()
    {
        var halfWidth = new Accuracy(14e-4, 0) { PercentOfRange = 2e-4 }.On(1).HalfWidth(0.928571, 1e-6);

        Close.ToDecimals(15e-6, halfWidth, 7);
        Close.ToDecimals(8.7e-6, Budget.Rectangular(halfWidth), 7);
    }

    // Notes on the uncertainty of digital multimeters, kpu.ca/physics: ±(2.5 % + 3 digits) of 0.01 V.
    [Theory]
    [InlineData(32.00, 0.83)]
    [InlineData(0.09, 0.03225)]
    public void Teaching_notes_examples_of_percent_and_digits_hold(double reading, double halfWidth)
    {
        Assert.True(Accuracy.TryParse("2.5% + 3 dgt", QuantityKind.Voltage, out var accuracy, out _));

        Close.ToDigits(halfWidth, accuracy.HalfWidth(reading, 0.01), 12);
    }

    // EURACHEM/CITAC, Use of uncertainty information in compliance assessment, Annex A: the decision limit for 95 % is
    // the limit less 1.64 u.
    [Fact]
    public void Decision_limit_agrees_with_EURACHEM_compliance_guide()
    {
        var zone = DecisionRule.Risk(0.05).AcceptanceZone(Estimate.Known(0, 1), Limits.Of(null, 100));

        Close.ToDecimals(100 - 1.64, zone?.Upper ?? 0, 2);
    }

    // JCGM 106:2012, 9.5.4: of the bearings 4.2 % are out before any are inspected.
    [Fact]
    public void Production_without_inspection_agrees_with_JCGM_106()
    {
        static double Bearings(double x) => x <= 0 ? 0 : MathNet.Numerics.Distributions.Gamma.PDF(4, 4, x);
        var risk = GlobalRisk.Of(Bearings, new(0, 15), Limits.Of(null, 2), new AcceptanceZone(null, null), 0.25);

        Close.ToDigits(0.0423801, risk.Consumers, 6);
        Assert.Equal(0, risk.Producers, 1e-12);
    }

    // JCGM 106:2012, 7.3: Φ((a − x)/u) lies below, 1 − Φ((b − x)/u) above; u = 0.3 against 4.6 to 6.2, each side by itself.
    // Φ by mpmath 1.3.0, to 40 digits.
    [Theory]
    [InlineData(5.4, 0.003830380568, 0.003830380568)]
    [InlineData(5.9, 0.000007343424, 0.158655253931)]
    public void Risk_of_each_side_agrees_with_the_formula_of_JCGM_106(double value, double below, double above)
    {
        var estimate = Estimate.Known(value, 0.3);

        Close.ToDecimals(below, estimate.ShareOutside(Limits.Of(4.6, null)), 11);
        Close.ToDecimals(above, estimate.ShareOutside(Limits.Of(null, 6.2)), 11);
        Close.ToDecimals(below + above, estimate.ShareOutside(Limits.Of(4.6, 6.2)), 11);
    }
}
