using InspectLog.App.Bench;
using InspectLog.App.Vehicles;
using InspectLog.Doubts;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Bench;

/// <summary>What a voice note proposed is counted as a person settles it, on every page.</summary>
public sealed class ProposalGroupsTests
{
    private const string Coil = "coil-circuit-resistance";

    /// <summary>Sequence of the first entry after the vehicle's and the inspection's.</summary>
    private const long Note = 3;

    private static readonly ProposedFinding Adjusted =
        new("action", Coil, null, null, null, null, null, false, "adjusted", "as said", 0, 7, []);

    [Fact]
    public void Repeats_of_one_reading_are_settled_together_and_count_once()
    {
        var scene = Said(Reading(0.8), Reading(0.7), Reading(9000, "lead-resistance", 4));

        Assert.Equal([2, 1], ProposalGroups.OpenIn(scene.Inspection).Select(group => group.Count));
        Assert.Equal("1 to settle", Standings.Of(scene.Inspection, scene.Sheet, scene.Sheet.Find(Coil)!).Word);
        Assert.Equal(["2 findings to confirm"], Attention.Of(scene.Vehicle, SheetLibrary.BuiltIn, new DateOnly(2026, 3, 4)));
    }

    [Fact]
    public void Doubt_in_one_of_the_repeats_is_a_doubt_of_all()
    {
        var scene = Said(Reading(0.8), Reading(0.7) with { Doubts = [new HeardUnclearly(["0.7"])] });

        Assert.Equal(["1 doubt to settle"], Attention.Of(scene.Vehicle, SheetLibrary.BuiltIn, new DateOnly(2026, 3, 4)));
    }

    [Fact]
    public void Values_before_and_after_an_adjustment_are_settled_apart()
    {
        var scene = Said(Reading(0.8), Adjusted, Reading(1.2));

        Assert.Equal([1, 1, 1], ProposalGroups.OpenIn(scene.Inspection).Select(group => group.Count));
    }

    [Fact]
    public void What_was_dropped_waits_no_more()
    {
        var scene = Said([Reading(0.8), Reading(9000, "lead-resistance", 4)], new FindingDropped(new(Note, 0)));

        Assert.Equal("lead-resistance", Assert.Single(ProposalGroups.OpenIn(scene.Inspection))[0].Finding.Check);
    }

    private static BenchScene Said(params ProposedFinding[] findings) => Said(findings, []);

    private static BenchScene Said(ProposedFinding[] findings, params EntryBody[] further) => Written.Scene(
    [
        new RecordingKept(Written.Inspection, new MediaFile(new string('a', 64), 32044, "audio/wav"), 1, null),
        new TranscriptMade(Note, "as said", [], true, "", ""),
        new FindingsProposed(Note, findings),
        .. further,
    ]);

    private static ProposedFinding Reading(double value, string check = Coil, int? cylinder = null) =>
        new("reading", check, cylinder, value, null, null, null, false, null, "as said", 0, 7, []);
}
