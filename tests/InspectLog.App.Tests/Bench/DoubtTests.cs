using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Bench;

/// <summary>Where the uncertainty of a reading comes from, and what would shrink it, in words.</summary>
public sealed class DoubtTests
{
    private static readonly Instrument Coarse = Meter("200 kΩ", 200_000, 1, 2, 100);
    private static readonly Instrument Fine = Meter("20 kΩ", 20_000, 0.8, 2, 10);

    [Fact]
    public void Shares_add_up_to_one_and_the_largest_is_named_first()
    {
        var doubt = Of(Read("coil-secondary-resistance", Coarse, [9000, 9100, 9300]));

        Assert.Equal(1, doubt.Parts.Sum(part => part.Share), 1e-9);
        Assert.Equal(doubt.Parts.OrderByDescending(part => part.Share), doubt.Parts);
        Assert.Contains(doubt.Parts[0].Name.ToLowerInvariant(), doubt.Largest, StringComparison.Ordinal);
    }

    /// <summary>±(0.8 % + 2 counts of 10 Ω) at 9000 Ω is 92 Ω, and a display step of 10 Ω: 2·√(92²/3 + 5²/3) = 106 Ω.</summary>
    [Fact]
    public void Finer_range_is_advised_with_the_figure_it_would_come_down_to()
    {
        var doubt = Of(Read("coil-secondary-resistance", Coarse, [9000]));

        Assert.StartsWith("Use the 20 kΩ range: ± 0.34 kΩ would come down to ± 0.11 kΩ", Plain(doubt.Remedies[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void Range_it_was_read_on_is_not_advised() =>
        Assert.DoesNotContain(Of(Read("coil-secondary-resistance", Fine, [9000])).Remedies, one => one.Contains("20 kΩ", StringComparison.Ordinal));

    [Fact]
    public void Range_that_cannot_show_the_value_is_not_advised() =>
        Assert.DoesNotContain(
            Of(Read("lead-resistance", Coarse, [21_900], 4)).Remedies, one => one.Contains("20 kΩ range", StringComparison.Ordinal));

    [Fact]
    public void Single_reading_is_told_what_repeating_does_and_does_not_do() =>
        Assert.Contains(
            Of(Read("coil-secondary-resistance", Fine, [9000])).Remedies, one => one.StartsWith("Reading it again", StringComparison.Ordinal));

    [Fact]
    public void Scattered_repeats_are_advised_to_go_on() =>
        Assert.StartsWith("Take ", Of(Read("coil-secondary-resistance", Fine, [8600, 9000, 9500])).Remedies[0], StringComparison.Ordinal);

    [Fact]
    public void Subtracted_leads_are_advised_to_be_nulled()
    {
        var meter = Meter("200 Ω", 200, 0.8, 3, 0.1);
        var given = Given("coil-circuit-resistance", meter, [1.8]) with { Leads = 0.3 };

        var doubt = Of(ReadingRecords.Decide(1, DecisionRule.NonBinary, given));

        Assert.Contains(doubt.Remedies, one => one.StartsWith("Null the test leads", StringComparison.Ordinal));
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
            Check("pickup-air-gap"), null, [], new Bracket(0.3, 0.45), "", null, []));

        Assert.StartsWith("Use gauges half as far apart", Of(bracket).Remedies[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_without_limits_has_no_doubt_to_weigh() =>
        Assert.Null(Doubt.Of(Read("ignition-timing", new("light", "Light", QuantityKind.Angle, new(0, 1), 1), [6]), Check("ignition-timing"), []));

    private static Doubt Of(ReadingDecided reading) => Doubt.Of(reading, Check(reading.Check), [Coarse, Fine])!;

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
