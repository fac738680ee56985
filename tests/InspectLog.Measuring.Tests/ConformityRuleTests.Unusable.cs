namespace InspectLog.Measuring.Tests;

/// <content>Readings nothing can be decided from.</content>
public partial class ConformityRuleTests
{
    public static TheoryData<Reading, string> Unusable => new()
    {
        { new DisplayedReading([], new Accuracy(1, 1), 0.1), "at least one value" },
        { new DisplayedReading([double.NaN], new Accuracy(1, 1), 0.1), "finite" },
        { new DisplayedReading([1, double.PositiveInfinity], new Accuracy(1, 1), 0.1), "finite" },
        { new DisplayedReading([1e308, -1e308, 1e308], new Accuracy(1, 1), 0.1), "too large" },
        { new DisplayedReading([1e308], new Accuracy(100, 1), 1e308), "too large" },
        { new DisplayedReading([1], new Accuracy(-1, 1), 0.1), "0 or more" },
        { new DisplayedReading([1], new Accuracy(1, -1), 0.1), "0 or more" },
        { new DisplayedReading([1], new Accuracy(double.NaN, 1), 0.1), "0 or more" },
        { new DisplayedReading([1], new Accuracy(1, double.PositiveInfinity), 0.1), "0 or more" },
        { new DisplayedReading([1], new Accuracy(1, 1), 0), "above 0" },
        { new DisplayedReading([1], new Accuracy(1, 1), -0.1), "above 0" },
        { new DisplayedReading([1], new Accuracy(1, 1), double.NaN), "above 0" },
        { new DisplayedReading([1], new Accuracy(1, 1), double.PositiveInfinity), "above 0" },
        { Known(-1, 4), "known scatter" },
        { Known(double.NaN, 4), "known scatter" },
        { Known(double.PositiveInfinity, null), "known scatter" },
        { Known(0.1, 0.5), "known scatter" },
        { new Bracket(0.4, 0.3), "larger than" },
        { new Bracket(0.3, 0.3), "larger than" },
        { new Bracket(double.NaN, 0.3), "finite" },
        { new Bracket(0.3, double.PositiveInfinity), "finite" },
        { new Bracket(-1.5e308, 1.5e308), "too large" },
    };

    [Theory]
    [MemberData(nameof(Unusable))]
    public void Unusable_reading_is_refused_with_the_reason(Reading reading, string reason)
    {
        var refusal = Assert.Throws<ArgumentException>(() => ConformityRule.Decide(reading, Limits.Of(0, 1)));

        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", refusal.Message, StringComparison.Ordinal);
    }

    private static DisplayedReading Known(double scatter, double? degrees) => new([1], new(1, 1), 0.1) { Scatter = new(scatter, degrees) };

    private sealed record Guess : Reading;

    [Fact]
    public void Reading_of_an_unknown_sort_is_refused() =>
        Assert.Contains(
            "type Guess",
            Assert.Throws<ArgumentException>(() => ConformityRule.Decide(new Guess(), Limits.Of(0, 1))).Message,
            StringComparison.Ordinal);
}
