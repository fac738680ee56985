using InspectLog.App.Reports;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using static InspectLog.App.Tests.Bench.Written;

namespace InspectLog.App.Tests.Ui;

/// <summary>What was seen and done at a place, as a buyer reads it: what holds comes first, and nothing is lost.</summary>
public sealed class PlaceHistoryTests
{
    private static readonly string[] Actions = ["replaced", "cleaned", "adjusted", "disconnected", "reconnected"];

    [Theory]
    [InlineData("", "")]
    [InlineData("clean", "Clean.")]
    [InlineData("not worn", "Not worn.")]
    [InlineData("weak; present; not weak", "Present, not weak. Before that: weak.")]
    [InlineData("not weak; present", "Present, not weak.")]
    [InlineData("cracked; worn", "Cracked, worn.")]
    [InlineData("not good; good", "Good. Before that: not good.")]
    [InlineData("worn; not worn; worn", "Worn. Before that: worn, not worn.")]
    public void Word_that_was_taken_back_stands_behind_what_holds(string said, string text) => Assert.Equal(text, Of(said));

    [Theory]
    [InlineData("replaced", "Replaced.")]
    [InlineData("burnt; replaced", "Burnt, then replaced.")]
    [InlineData("burnt; replaced; good", "Good. Before that: burnt, then replaced.")]
    [InlineData("burnt; cracked; replaced; good", "Good. Before that: burnt, cracked, then replaced.")]
    [InlineData("worn; cleaned; worn; replaced; good", "Good. Before that: worn, then cleaned, then worn, then replaced.")]
    [InlineData("burnt; replaced; good; disconnected; reconnected", "Good, then disconnected, then reconnected. Before that: burnt, then replaced.")]
    [InlineData("cracked; disconnected; worn", "Cracked, worn. Before that: disconnected.")]
    public void What_was_done_parts_what_was_seen_before_from_what_holds(string said, string text) => Assert.Equal(text, Of(said));

    [Theory]
    [InlineData("good; good", "Good.")]
    [InlineData("good; worn; good", "Good, worn.")]
    [InlineData("replaced; replaced", "Replaced.")]
    [InlineData("good; cleaned; good", "Good. Before that: good, then cleaned.")]
    public void Word_said_again_is_told_again_only_after_something_was_done(string said, string text) => Assert.Equal(text, Of(said));

    [Fact]
    public void Reading_before_an_adjustment_is_told_with_its_decision()
    {
        Assert.Equal("Before that: 0.550\u00a0mm (fail), then adjusted.", OfAirGap(Reading("pickup-air-gap", 0.55), Done("pickup-air-gap", "adjusted"), Reading("pickup-air-gap", 0.3)));
        Assert.Equal("Adjusted. Before that: 0.550\u00a0mm (fail).", OfAirGap(Reading("pickup-air-gap", 0.55), Reading("pickup-air-gap", 0.3), Done("pickup-air-gap", "adjusted")));
    }

    [Fact]
    public void One_reading_has_nothing_before_it() => Assert.Equal("", OfAirGap(Reading("pickup-air-gap", 0.3)));

    private static string OfAirGap(params EntryBody[] records)
    {
        var scene = Scene(records);
        var check = scene.Sheet.Find("pickup-air-gap")!;
        return PlaceHistory.Of(Standings.Of(scene.Inspection, scene.Sheet, check).Places[0], check);
    }

    private static string Of(string said)
    {
        var words = said.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select((word, at) => (Word: word, Sequence: (long)at)).ToList();
        return PlaceHistory.Of(new PlaceView(
            2,
            "Tower 2",
            null,
            [.. words.Where(one => !Actions.Contains(one.Word)).Select(one => Seen(one.Word, one.Sequence))],
            [.. words.Where(one => Actions.Contains(one.Word)).Select(one => new Recorded<ActionDone>(one.Sequence, default, new(1, "cap-contacts", 2, one.Word, null)))],
            PlaceOutcome.Recorded,
            "recorded"), BuiltInSheets.All[0].Find("cap-contacts")!);
    }

    private static Recorded<ObservationMade> Seen(string word, long sequence)
    {
        var negated = word.StartsWith("not ", StringComparison.Ordinal);
        return new(sequence, default, new(1, "cap-contacts", 2, negated ? word[4..] : word, negated, null));
    }
}
