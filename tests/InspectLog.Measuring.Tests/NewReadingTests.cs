namespace InspectLog.Measuring.Tests;

/// <summary>What a reading that is being taken must hold to.</summary>
public class NewReadingTests
{
    [Theory]
    [InlineData(0.2, 0.2)]
    [InlineData(0.1, 0.2)]
    public void Part_that_reads_no_more_than_the_leads_within_the_uncertainty_is_as_good_as_zero(double value, double leads)
    {
        var estimate = NewReading.Estimate(Less(value, leads));

        Assert.Equal(value - leads, estimate.Value, 12);
        Assert.Equal(value < leads, NewReading.IsAsGoodAsZero(QuantityKind.Resistance, estimate.Value));
    }

    [Fact]
    public void Part_that_reads_clearly_less_than_the_leads_is_refused()
    {
        var problem = Assert.Throws<ArgumentException>(() => NewReading.Estimate(Less(0.2, 1.9)));

        Assert.Contains("The test leads read more than the part", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Voltage_below_zero_is_not_taken_for_zero()
    {
        Assert.False(NewReading.IsAsGoodAsZero(QuantityKind.Voltage, -0.1));
    }

    [Fact]
    public void Numbers_too_large_to_work_with_are_refused()
    {
        Assert.Throws<ArgumentException>(() => NewReading.Estimate(new DisplayedReading([1e16], new(1, 1), 1)));
        Assert.Throws<ArgumentException>(() => NewReading.Estimate(new DisplayedReading([1], new(1, 1e6), 1e12)));
    }

    [Theory]
    [InlineData(-0.3, 0.35)]
    [InlineData(-0.4, -0.3)]
    public void Gauge_below_zero_is_refused(double goes, double stops)
    {
        Assert.Contains("below zero", Assert.Throws<ArgumentException>(() => NewReading.Estimate(new Bracket(goes, stops))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Blade_below_zero_in_a_stack_is_refused_though_the_stack_is_not()
    {
        Assert.Throws<ArgumentException>(() => FeelerBlades.Exact([0.5, -0.2], [0.4]));
        Assert.Throws<ArgumentException>(() => FeelerBlades.Exact([], [0.4]));
        Assert.Throws<ArgumentException>(() => FeelerBlades.Exact([0.5], [0.4]));
    }

    [Fact]
    public void No_gauge_at_all_may_go()
    {
        Assert.Equal(new Bracket(0, 0.05), FeelerBlades.Exact([0], [0.05]));
        Assert.Equal(new Bracket(0.3, 0.35), FeelerBlades.Exact([0.1, 0.2], [0.1, 0.25]) with { Goes = 0.3 });
    }

    private static DisplayedReading Less(double value, double leads) =>
        new([value], new(0.8, 3), 0.1) { Leads = new([leads], new(0.8, 3), 0.1, SameInstrument: true) };
}
