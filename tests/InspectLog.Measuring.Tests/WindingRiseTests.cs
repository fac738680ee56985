namespace InspectLog.Measuring.Tests;

/// <summary>A winding's temperature by the rise of its resistance. 3.00 Ω at 20 °C, 3.60 Ω hot, air at 22 °C:
/// 3.60/3.00·(235 + 20) − 235 = 71.0 °C, a rise of 49.0 K by IEC 60034-1, 8.6.2 (from memory).</summary>
public class WindingRiseTests
{
    private static readonly DisplayedReading Cold = Some.Reading([3.00], 0.5, 2, 0.01);
    private static readonly DisplayedReading Hot = Some.Reading([3.60], 0.5, 2, 0.01);

    private static WindingRise Rise(bool oneMeter, double within, bool oneThermometer = false) => WindingRise.Of(
        Compared.Of(ComparisonForm.Proportion, Hot, Cold, oneMeter), new RiseTemperatures(20, 22, within, oneThermometer));

    [Fact]
    public void Temperature_and_rise_agree_with_IEC_60034()
    {
        var (temperature, rise) = Rise(oneMeter: true, within: 0);

        Close.ToDecimals(71.0, temperature.Value, 9);
        Close.ToDecimals(49.0, rise.Value, 9);
    }

    // By hand, JCGM 100:2008, 5.1: the ratio 1.2 moves by 255 K a unit. Counts of ±0.02 Ω (u 11.547 mΩ) and half steps of
    // ±5 mΩ (u 2.887 mΩ) of each make u(ratio) = 1.2·√(11.547² + 2.887²)/1000·√(1/3.6² + 1/3²) = 0.0061974, and 1.5803 K.
    // ±1 K of each thermometer (u 0.57735 K) moves the rise by 1.2 and by 1: √(1.5803² + 0.69282² + 0.57735²) = 1.8196 K.
    [Fact]
    public void Rise_carries_the_counts_of_one_meter_and_both_temperatures()
    {
        Close.ToDecimals(1.5803, Rise(oneMeter: true, within: 0).Rise.StandardUncertainty, 4);
        Close.ToDecimals(1.8196, Rise(oneMeter: true, within: 1).Rise.StandardUncertainty, 4);
    }

    // As above; two meters bring their ±0.5 % each: half-widths of 38 and 35 mΩ instead of 20 and 20, u(ratio) = 0.0110034,
    // 2.8059 K, with the temperatures 2.9472 K.
    [Fact]
    public void Error_in_percent_drops_out_with_one_meter_and_stays_with_two() =>
        Close.ToDecimals(2.9472, Rise(oneMeter: false, within: 1).Rise.StandardUncertainty, 4);

    // One thermometer moves the rise by 1.2 − 1 a degree: 0.11547 K. The winding's own temperature it moves by 1.2.
    [Fact]
    public void Error_of_one_thermometer_nearly_drops_out_of_the_rise_and_not_of_the_temperature()
    {
        var (temperature, rise) = Rise(oneMeter: true, within: 1, oneThermometer: true);

        Close.ToDecimals(1.5845, rise.StandardUncertainty, 4);
        Close.ToDecimals(1.7255, temperature.StandardUncertainty, 4);
    }

    [Fact]
    public void Budget_names_what_it_comes_from_and_nothing_that_adds_nothing()
    {
        var parts = Rise(oneMeter: true, within: 1).Rise.Contributions.Select(part => part.Name).ToList();

        Assert.Contains("thermometer at the cold winding", parts);
        Assert.Contains("thermometer at the coolant", parts);
        Assert.Contains("counts of this reading", parts);
        Assert.DoesNotContain("accuracy in percent, common to both readings", parts);
    }

    [Fact]
    public void Coverage_is_the_one_asked_for()
    {
        var ratio = Compared.Of(ComparisonForm.Proportion, Hot, Cold, true);

        Assert.True(
            WindingRise.Of(ratio, new(20, 22, 1), Evaluation.Covering(99)).Rise.ExpandedUncertainty
            > WindingRise.Of(ratio, new(20, 22, 1)).Rise.ExpandedUncertainty);
    }

    [Theory]
    [InlineData(-61, 22, 0, 235, "−60 and 300")]
    [InlineData(20, 301, 0, 235, "−60 and 300")]
    [InlineData(20, 22, -1, 235, "0 or more")]
    [InlineData(20, 22, 0, 100, "near 235")]
    public void Numbers_out_of_range_are_refused(double cold, double coolant, double within, double zero, string reason) =>
        Assert.Contains(
            reason,
            Assert.Throws<ArgumentException>(() => WindingRise.Of(Estimate.Known(1.2, 0), new(cold, coolant, within, false, zero))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Ratio_of_nothing_is_refused() =>
        Assert.Throws<ArgumentException>(() => WindingRise.Of(Estimate.Known(0, 0), new(20, 22)));
}
