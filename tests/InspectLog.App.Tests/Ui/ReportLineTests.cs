using InspectLog.App.Bench;
using InspectLog.App.Reports;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Collections.Immutable;

namespace InspectLog.App.Tests.Ui;

/// <summary>How the places of a check are put together in the report.</summary>
public sealed class ReportLineTests
{
    private static readonly Check Cap = BuiltInSheets.All[0].Find("cap-contacts")!;

    private static PlaceView Place(int cylinder, string? condition, PlaceOutcome outcome, params string[] actions) => new(
        cylinder,
        $"Tower {cylinder}",
        null,
        condition is null ? [] : [new Recorded<ObservationMade>(cylinder, default, new(1, Cap.Id, cylinder, condition, false, null))],
        [.. actions.Select(action => new Recorded<ActionDone>(cylinder, default, new(1, Cap.Id, cylinder, action, null)))],
        outcome,
        condition ?? "not done");

    private static IReadOnlyList<ReportLine> Lines(params PlaceView[] places) =>
        ReportLine.Of(BuiltInSheets.All[0], Cap, new CheckProgress(CheckStanding.Captured, PlaceOutcome.Good, "", places, 0));

    [Fact]
    public void Places_of_which_the_same_is_said_share_a_line()
    {
        var lines = Lines(
            Place(1, "clean", PlaceOutcome.Good), Place(2, "burnt", PlaceOutcome.Bad), Place(3, "clean", PlaceOutcome.Good));

        Assert.Equal(["Towers 1 and 3", "Tower 2"], lines.Select(line => line.Places));
        Assert.Equal(["Clean.", "Burnt."], lines.Select(line => line.Text));
    }

    [Fact]
    public void Place_that_is_not_done_has_no_line()
    {
        Assert.Empty(Lines(Place(1, null, PlaceOutcome.None)));
    }

    [Fact]
    public void What_was_done_stands_behind_what_was_seen()
    {
        Assert.Equal("Burnt, then replaced.", Assert.Single(Lines(Place(2, "burnt", PlaceOutcome.Bad, "replaced"))).Text);
    }
}
