namespace InspectLog.Measuring.Tests;

public partial class AdviceTests
{
    private static readonly Instrument Meter = new("bench-meter", "Bench meter", QuantityKind.Resistance, new(0.8, 3), 100)
    {
        Ranges =
        [
            new("2 kΩ", 1_999, new(0.8, 3), 1),
            new("20 kΩ", 19_990, new(0.8, 3), 10),
            new("200 kΩ", 199_900, new(0.8, 3), 100),
        ],
    };

    [Fact]
    public void Finer_range_that_still_shows_the_value_is_advised()
    {
        var reading = Some.Reading([8200], 0.8, 3, 100);
        var advice = Advice.For(reading, Limits.Of(8000, 13000), Meter);

        var best = Assert.Single(advice.Improvements);
        Assert.Equal("use the 20 kΩ range", best.Action);
        Close.ToDigits(
            Estimate.Of(Some.Reading([8200], 0.8, 3, 10)).ExpandedUncertainty, best.ExpandedUncertainty, 12);
        Close.ToDigits(200, advice.UncertaintyNeeded, 12);
    }

    [Fact]
    public void Accuracy_needed_decides_and_a_little_more_does_not()
    {
        var limits = Limits.Of(8000, 13000);
        var advice = Advice.For(Some.Reading([8200], 0.8, 3, 100), limits);
        var needed = advice.AccuracyNeeded.GetValueOrDefault();

        Assert.Equal(Decision.Pass, WithAccuracy(needed * 0.9999));
        Assert.Equal(Decision.ConditionalPass, WithAccuracy(needed * 1.0001));

        Decision WithAccuracy(double halfWidth) =>
            ConformityRule.Decide(Some.Reading([8200], 0, halfWidth / 100, 100), limits).Decision;
    }

    [Fact]
    public void Accuracy_cannot_help_where_the_display_alone_is_too_coarse()
    {
        var advice = Advice.For(Some.Reading([8020], 0.8, 3, 100), Limits.Of(8000, 13000));

        Assert.Null(advice.AccuracyNeeded);
        Assert.Null(advice.ReadingsNeeded);
        Assert.Empty(advice.Improvements);
    }

    [Fact]
    public void Readings_needed_decide_and_one_fewer_does_not()
    {
        var limits = Limits.Of(0.6, 2.0);
        var reading = Some.Reading([1.86, 1.96, 1.91], 0.1, 0, 0.01);
        var advice = Advice.For(reading, limits);
        var count = advice.ReadingsNeeded.GetValueOrDefault();
        // More readings with the same mean and the same standard deviation as the first three.
        var s = Sample.Of(reading.Values).StandardDeviation;

        Assert.InRange(count, 4, 30);
        Assert.Equal(Decision.Pass, WithReadings(count));
        Assert.Equal(Decision.ConditionalPass, WithReadings(count - 1));
        Assert.Contains(advice.Improvements, improvement => improvement.Action == $"take {Math.Max(count, 6)} readings in all");

        Decision WithReadings(int n)
        {
            var spread = s * Math.Sqrt((n - 1) / 2.0);
            double[] values = [1.91 - spread, 1.91 + spread, .. Enumerable.Repeat(1.91, n - 2)];
            return ConformityRule.Decide(Some.Reading(values, 0.1, 0, 0.01), limits).Decision;
        }
    }

    [Theory]
    [InlineData(9)]
    [InlineData(30)]
    public void Readings_needed_are_those_that_just_do(int count)
    {
        // JCGM 100:2008, 4.2.3 and G.4: with n readings of the same scatter s the mean has s/√n and n − 1 degrees of
        // freedom. The limit is put exactly where that is enough.
        var reading = Some.Reading([-0.01, 0, 0.01], 0, 0, 1e-3);
        var known = 0.5e-3 / Math.Sqrt(3);
        var mean = 0.01 / Math.Sqrt(count);
        var u = double.Hypot(known, mean);
        var degrees = (count - 1) * Math.Pow(u / mean, 4);
        var enough = Coverage.Factor(degrees) * u;

        var advice = Advice.For(reading, Limits.Of(null, enough * (1 + 1e-9)), evaluation: Evaluation.Classical);
        Assert.Equal(count, advice.ReadingsNeeded);
        var best = advice.Improvements[0];
        Assert.Equal($"take {count} readings in all", best.Action);
        Close.ToDigits(enough, best.ExpandedUncertainty, 9);
        Assert.True(best.Settles(advice));
        var tooFew = Advice.For(reading, Limits.Of(null, enough * (1 - 1e-9)), evaluation: Evaluation.Classical).ReadingsNeeded;
        Assert.Equal(count == 30 ? null : count + 1, tooFew);
    }

    [Fact]
    public void Number_of_readings_that_does_exactly_is_enough()
    {
        var reading = Some.Reading([-0.01, 0, 0.01], 0, 0, 1e-3);
        var estimate = Estimate.Of(reading);
        var repeats = estimate.Contributions[0];
        var enough = Changed.Expanded(estimate, 0, repeats.StandardUncertainty * Math.Sqrt(3.0 / 9), 8);

        Assert.Equal((0, "spread of the repeats"), (estimate.Value, repeats.Name));
        Assert.Equal(9, Advice.For(reading, Limits.Of(null, enough)).ReadingsNeeded);
    }

    [Fact]
    public void Uncertainty_that_just_does_is_enough()
    {
        var reading = Some.Reading([0], 0, 0, 0.1);
        var limits = Limits.Of(null, Estimate.Of(reading).ExpandedUncertainty);

        Assert.Equal(1, Advice.For(reading, limits).ReadingsNeeded);
        // The display alone is just good enough. A second box only rounds the corners of the first, which begins to reach
        // the middle 95.45 % once it is wider than the 4.55 % that are left.
        Close.ToDigits(
            (1 - Coverage.Probability) * 0.05,
            Advice.For(reading with { Accuracy = new(0, 3) }, limits).AccuracyNeeded.GetValueOrDefault(-1),
            6);
    }

    [Fact]
    public void Accuracy_that_could_be_worse_is_told_as_well()
    {
        var needed = Advice.For(Some.Reading([1.5], 0, 0.1, 0.01), Limits.Of(0, 2)).AccuracyNeeded.GetValueOrDefault();

        Close.ToDigits(0.5, Estimate.Of(Some.Reading([1.5], 0, needed / 0.01, 0.01)).ExpandedUncertainty, 9);
    }

    [Fact]
    public void Range_must_show_every_value_and_may_be_full()
    {
        Assert.DoesNotContain(
            Advice.For(Some.Reading([1995, 2003], 0.8, 3, 100), Limits.Of(0, 2200), Meter).Improvements,
            improvement => improvement.Action == "use the 2 kΩ range");
        Assert.Contains(
            Advice.For(Some.Reading([1999], 0.8, 3, 100), Limits.Of(0, 2200), Meter).Improvements,
            improvement => improvement.Action == "use the 2 kΩ range");
    }
}
