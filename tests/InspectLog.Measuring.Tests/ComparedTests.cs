namespace InspectLog.Measuring.Tests;

public class ComparedTests
{
    // ±(0.8 % + 2) on a 20 V range in steps of 10 mV, as common practice has it; no source.
    private static readonly Accuracy Meter = new(0.8, 2);

    private static readonly DisplayedReading Battery = Volts(12.8);

    // By hand (GUM 5.1.2 with the error in percent as one input of both): the difference is 1.2 V; its share of
    // 0.8 % is 9.6 mV, and two counts and half a step are each reading's own: (9.6² + 2·20² + 2·5²)/3 mV².
    [Fact]
    public void One_meter_on_one_range_leaves_the_share_of_the_difference_only()
    {
        var lost = Compared.Of(ComparisonForm.Difference, Volts(11.6), Battery, sameInstrument: true);

        Close.ToDigits(1.2, lost.Value, 12);
        Close.ToDigits(Math.Sqrt(((9.6 * 9.6) + (2 * 20 * 20) + (2 * 5 * 5)) / 3) / 1000, lost.StandardUncertainty, 9);
        Assert.Equal(double.PositiveInfinity, lost.DegreesOfFreedom);
        Assert.Equal(5, lost.Contributions.Count);
        Assert.Contains(lost.Contributions, one => one.Name.Contains("common to both", StringComparison.Ordinal));
    }

    // By hand: each reading's whole accuracy, 0.8 % of it and two counts, 122.4 mV and 112.8 mV, and half a step.
    [Fact]
    public void Two_meters_leave_the_whole_accuracy_of_both()
    {
        var lost = Compared.Of(ComparisonForm.Difference, Volts(11.6), Battery, sameInstrument: false);

        Close.ToDigits(
            Math.Sqrt(((122.4 * 122.4) + (112.8 * 112.8) + (2 * 5 * 5)) / 3) / 1000, lost.StandardUncertainty, 9);
        Assert.Equal(4, lost.Contributions.Count);
    }

    // The same by the library's way for correlated inputs (GUM 5.2.2): gains with correlation 1, the rest independent.
    [Fact]
    public void One_meter_agrees_with_gains_of_correlation_one()
    {
        Input[] inputs =
        [
            new("battery gain", 12.8, Budget.Rectangular(0.008 * 12.8)), new("feed gain", 11.6, Budget.Rectangular(0.008 * 11.6)),
            new("battery rest", 0, Math.Sqrt((0.02 * 0.02) + (0.005 * 0.005)) / Math.Sqrt(3)),
            new("feed rest", 0, Math.Sqrt((0.02 * 0.02) + (0.005 * 0.005)) / Math.Sqrt(3)),
        ];
        var byCorrelation = Derived.Of(v => v[0] + v[2] - v[1] - v[3], inputs, (i, j) => (i, j) == (0, 1) ? 1 : 0);

        var lost = Compared.Of(ComparisonForm.Difference, Volts(11.6), Battery, sameInstrument: true);

        Close.ToDigits(byCorrelation.StandardUncertainty, lost.StandardUncertainty, 9);
    }

    [Fact]
    public void Other_range_of_the_same_meter_is_as_another_meter()
    {
        var coarse = new DisplayedReading([12.8], new(0.8, 2), 0.1);

        Assert.Equal(
            Compared.Of(ComparisonForm.Difference, Volts(11.6), coarse, sameInstrument: false).StandardUncertainty,
            Compared.Of(ComparisonForm.Difference, Volts(11.6), coarse, sameInstrument: true).StandardUncertainty);
    }

    // What is corrected for cannot be told apart, so nothing is taken as common.
    [Fact]
    public void Readings_less_their_test_leads_are_taken_as_independent()
    {
        var one = new DisplayedReading([1.8], new(1, 5), 0.1) { Leads = new([0.3], new(1, 5), 0.1, true) };
        var two = new DisplayedReading([3.1], new(1, 5), 0.1);

        var u = Compared.Of(ComparisonForm.Difference, one, two, sameInstrument: true);

        Close.ToDigits(
            double.Hypot(Estimate.Of(one).StandardUncertainty, Estimate.Of(two).StandardUncertainty), u.StandardUncertainty, 9);
        Close.ToDigits(1.6, u.Value, 12);
    }

    // 18.2 kΩ over 600 mm: by hand 30.333 Ω/mm; of a quotient the relative uncertainties add in squares (GUM 5.1.6).
    [Fact]
    public void Proportion_has_the_relative_uncertainties_of_both()
    {
        var (lead, length) = (new DisplayedReading([18_200], new(1, 5), 10), new DisplayedReading([600], new(0, 1), 1));

        var perLength = Compared.Of(ComparisonForm.Proportion, lead, length, sameInstrument: false);

        var (r, l) = (Estimate.Of(lead), Estimate.Of(length));
        Close.ToDigits(18_200.0 / 600, perLength.Value, 12);
        Close.ToDigits(
            perLength.Value * double.Hypot(r.StandardUncertainty / r.Value, l.StandardUncertainty / l.Value),
            perLength.StandardUncertainty, 9);
    }

    // One meter's error in percent is the same share above and below the line.
    [Fact]
    public void Common_gain_drops_out_of_a_proportion()
    {
        var ratio = Compared.Of(ComparisonForm.Proportion, Volts(6.4), Battery, sameInstrument: true);

        Assert.Equal(0.5, ratio.Value);
        Assert.DoesNotContain(ratio.Contributions, one => one.Name.Contains("common", StringComparison.Ordinal));
    }

    [Fact]
    public void Repeats_keep_their_few_degrees_of_freedom()
    {
        var scattered = new DisplayedReading([11.3, 11.9], Meter, 0.01);

        var lost = Compared.Of(ComparisonForm.Difference, scattered, Battery, sameInstrument: true);

        Assert.True(lost.DegreesOfFreedom < 1.1);
        Assert.True(lost.CoverageFactor > 10);
    }

    [Fact]
    public void Nothing_to_divide_by_gives_no_figure() =>
        Assert.Throws<ArgumentException>(() => Compared.Of(
            ComparisonForm.Proportion, Volts(1), new DisplayedReading([0], new(0, 1), 1), sameInstrument: false));

    [Fact]
    public void Difference_is_printed_in_the_unit_of_the_reading_and_a_proportion_in_both_base_units()
    {
        var difference = ComparedUnits.Of(ComparisonForm.Difference, Units.Fahrenheit, Units.Celsius);
        var proportion = ComparedUnits.Of(ComparisonForm.Proportion, Units.Kilohm, Units.Inch);

        Assert.Equal("°F", difference.Symbol);
        Close.ToDigits(9, difference.FromBase(5), 12);
        Assert.Equal("30.3\u00a0Ω/mm", Printed.Value(30.3, proportion));
    }

    private static DisplayedReading Volts(double value) => new([value], Meter, 0.01);
}
