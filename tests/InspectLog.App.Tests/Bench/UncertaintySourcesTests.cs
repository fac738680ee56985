using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Bench;

/// <summary>Where the uncertainty of a reading comes from, and what would shrink it, in words.</summary>
public sealed class UncertaintySourcesTests
{
    private static readonly Instrument Coarse = Meter("200 kΩ", 200_000, 1, 2, 100);
    private static readonly Instrument Fine = Meter("20 kΩ", 20_000, 0.8, 2, 10);

    [Fact]
    public void Shares_add_up_to_one_and_the_largest_is_named_first()
    {
        var sources = Of(Read("coil-secondary-resistance", Coarse, [9000, 9100, 9300]));

        Assert.Equal(1, sources.Parts.Sum(part => part.Share), 1e-9);
        Assert.Equal(sources.Parts.OrderByDescending(part => part.Share), sources.Parts);
        Assert.Contains(sources.Parts[0].Name.ToLowerInvariant(), sources.Largest, StringComparison.Ordinal);
    }

    /// <summary>(92 Ω ÷ √3)² of (92 ÷ √3)² + (5 ÷ √3)² is 99.7 %: not all of it, so it is not said to be.</summary>
    [Fact]
    public void Share_that_rounds_to_all_of_it_is_not_said_to_be_all() =>
        Assert.StartsWith("Most of it, 99 %, is the instrument accuracy.", Plain(Of(Read("coil-secondary-resistance", Fine, [9000])).Largest), StringComparison.Ordinal);

    /// <summary>±(0.8 % + 2 counts of 10 Ω) at 9000 Ω is 92 Ω, half a display step 5 Ω: the middle 95.45 % of their
    /// trapezoid ends at 97 − √(0.0455·184·10) = 88 Ω (EA-4/02 S10, from memory).</summary>
    [Fact]
    public void Finer_range_is_advised_with_the_figure_it_would_come_down_to()
    {
        var sources = Of(Read("coil-secondary-resistance", Coarse, [9000]));

        Assert.StartsWith("Use the 20 kΩ range: ± 0.29 kΩ would come down to ± 0.088 kΩ", Plain(sources.Remedies[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void Range_it_was_read_on_is_not_advised() =>
        Assert.DoesNotContain(Of(Read("coil-secondary-resistance", Fine, [9000])).Remedies, one => one.Contains("20 kΩ", StringComparison.Ordinal));

    [Fact]
    public void Range_that_cannot_show_the_value_is_not_advised() =>
        Assert.DoesNotContain(
            Of(Read("lead-resistance", Coarse, [21_900], 4)).Remedies, one => one.Contains("20 kΩ range", StringComparison.Ordinal));

    [Fact]
    public void Single_reading_is_told_that_it_hides_scatter() =>
        Assert.Contains(
            Of(Read("coil-secondary-resistance", Fine, [9000])).Remedies, one => one.StartsWith("A single reading hides", StringComparison.Ordinal));

    [Theory]
    [InlineData(2, "Two readings say little about scatter")]
    [InlineData(3, "Three readings say only a little")]
    [InlineData(4, null)]
    public void Few_readings_are_shown_for_what_they_are(int count, string? words)
    {
        double[] values = [9000, 9100, 9050, 9070];
        var remedies = Of(Read("coil-secondary-resistance", Fine, values[..count])).Remedies;

        Assert.Equal(words is not null, remedies.Any(one => one.Contains("say", StringComparison.Ordinal)));
        Assert.All(words is null ? [] : new[] { words }, some => Assert.Contains(remedies, one => one.StartsWith(some, StringComparison.Ordinal)));
    }

    [Fact]
    public void Each_contribution_says_how_it_was_found()
    {
        var found = Of(Read("coil-secondary-resistance", Fine, [9000, 9100])).Parts.ToDictionary(part => part.Name, part => Plain(part.FoundFrom));

        Assert.Equal("A, 1 degree of freedom", found["Spread of the repeats"]);
        Assert.Equal("B, even, ÷ √3", found["Instrument accuracy"]);
    }

    /// <summary>Records from before there was a choice hold a classical uncertainty: what would shrink it is told against
    /// that, not against another.</summary>
    [Fact]
    public void Old_record_is_advised_on_as_it_was_decided()
    {
        var reading = Read("coil-secondary-resistance", Coarse, [9000, 9100]);
        var displayed = (DisplayedReading)reading.Reading;
        var classical = Estimate.Of(displayed, Evaluation.Classical);
        var old = reading with
        {
            Conformity = ConformityRule.Decide(classical, Limits.Of(8000, 13000), DecisionRule.NonBinary) with { Evaluation = null },
        };

        Assert.Equal(EvaluationMethod.Classical, RecordWords.EvaluationOf(old).Method);
        Assert.Equal(EvaluationMethod.Distribution, RecordWords.EvaluationOf(reading).Method);
        Assert.NotEqual(Of(reading).Largest, Of(old).Largest);
    }

    [Fact]
    public void Scattered_repeats_are_advised_to_go_on() =>
        Assert.StartsWith("Take ", Of(Read("coil-secondary-resistance", Fine, [8600, 9000, 9500])).Remedies[0], StringComparison.Ordinal);

    [Fact]
    public void Subtracted_leads_are_advised_to_be_nulled()
    {
        var meter = Meter("200 Ω", 200, 0.8, 3, 0.1);
        var given = Given("coil-circuit-resistance", meter, [1.8]) with { Leads = 0.3 };

        var sources = Of(ReadingRecords.Decide(1, DecisionRule.NonBinary, given));

        Assert.Contains(sources.Remedies, one => one.StartsWith("Null the test leads", StringComparison.Ordinal));
    }

    [Fact]
    public void Doubtful_decision_is_told_the_accuracy_that_would_settle_it() =>
        Assert.Contains(
            Of(Read("coil-circuit-resistance", Meter("200 Ω", 200, 0.8, 3, 0.01), [1.985])).Remedies,
            one => one.Contains("would settle it", StringComparison.Ordinal));

    [Fact]
    public void Bracket_is_advised_to_take_closer_gauges()
    {
        var bracket = ReadingRecords.Decide(1, DecisionRule.NonBinary, new GivenReading(
            Check("pickup-air-gap"), null, [], new Bracket(0.25, 0.45), "", null, []));

        Assert.StartsWith("Use gauges half as far apart", Of(bracket).Remedies[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_without_limits_has_no_uncertainty_to_weigh() =>
        Assert.Null(UncertaintySources.Of(Read("ignition-timing", new("light", "Light", QuantityKind.Angle, new(0, 1), 1), [6]), Check("ignition-timing"), []));

    private static UncertaintySources Of(ReadingDecided reading) => UncertaintySources.Of(reading, Check(reading.Check), [Coarse, Fine])!;

    private static ReadingDecided Read(string check, Instrument instrument, double[] values, int? cylinder = null) =>
        ReadingRecords.Decide(1, DecisionRule.NonBinary, Given(check, instrument, values, cylinder));

    private static GivenReading Given(string check, Instrument instrument, double[] values, int? cylinder = null) =>
        new(Check(check), cylinder, values, null, "", instrument, []);

    private static Check Check(string id) => BuiltInSheets.All[0].Find(id)!;

    private static string Plain(string text) => text.Replace('\u00a0', ' ');

    private static Instrument Meter(string range, double fullScale, double percent, double counts, double step) =>
        new($"meter-{step}", range, QuantityKind.Resistance, new(percent, counts), step)
        {
            Ranges = [new(range, fullScale, new(percent, counts), step)],
        };
}
