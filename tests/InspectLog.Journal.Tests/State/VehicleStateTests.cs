using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using static InspectLog.Journal.Tests.Support.Written;

namespace InspectLog.Journal.Tests.State;

/// <summary>What a vehicle's entries say of it as a whole.</summary>
public sealed class VehicleStateTests
{
    [Fact]
    public void Vehicle_is_what_was_said_of_it_last()
    {
        var engine = new EngineLayout(6, [1, 5, 3, 6, 2, 4], RotorRotation.Clockwise);

        var state = After(
            new VehicleAdded("Teasel", "old", null),
            new VehicleDescribed("Marigold", "1968 saloon", engine),
            new VehiclePictured(Some.Photo),
            new PrivateFactsNoted("Ana Lindqvist", "", ""),
            new PrivateFactsNoted("Tove Marr", "", ""),
            new LimitsSet("plug-gap", 0.6, 0.8, "manual"),
            new LimitsSet("coil-circuit-resistance", 1, 2, "manual"),
            new LimitsSet("plug-gap", 0.7, 0.9, "manual, page 4"),
            new LimitsCleared("coil-circuit-resistance"));

        Assert.Equal(("Marigold", "1968 saloon", engine), (state.Name, state.Description, state.Engine));
        Assert.Equal(Some.Photo, state.Picture);
        Assert.Equal("Tove Marr", state.Private!.Owner);
        Assert.Equal([("plug-gap", 0.7)], state.Limits.Select(pair => (pair.Key.Check, pair.Value.Lower!.Value)));
        Assert.Equal(10, state.NextSequence);
    }

    [Fact]
    public void Vehicle_without_a_first_entry_is_called_by_its_id() =>
        Assert.Equal("teasel", VehicleState.Before("teasel").Name);

    [Fact]
    public void Entry_without_a_body_counts_and_changes_nothing_else()
    {
        var before = After(new VehicleAdded("Teasel", "", null));

        var after = before.Apply(Entry(2, null));

        Assert.Equal((3, "hash 2"), (after.NextSequence, after.LastHash));
        Assert.Equal((before.Name, before.Inspections, before.Limits), (after.Name, after.Inspections, after.Limits));
    }

    [Fact]
    public void Entry_of_one_inspection_leaves_the_others_alone()
    {
        var state = After(
            new VehicleAdded("Teasel", "", null),
            Start,
            new RecordingKept(2, Some.Recording, 1, null),
            new LooseEndOpened(2, "off", "on", null, null, null),
            new InspectionClosed(2),
            Start);
        var first = state.Inspections[0];

        var after = Apply(
            state,
            new NoteWritten(6, null, "second"),
            new RecordingKept(6, Some.Recording, 1, null),
            new TranscriptMade(8, "words", [], true, "m", ""),
            new FindingsProposed(8, []),
            new FindingDropped(new(8, 0)),
            new LooseEndOpened(6, "off", "on", null, null, null),
            new LooseEndTied(12),
            new CheckLeftOut(6, "plug-gap", "reason"),
            new InspectionClosed(6));

        Assert.Equal(first, after.Inspections[0]);
        Assert.Null(after.OpenInspection);
        Assert.Equal(6, after.Inspection(6)!.Number);
        Assert.Null(after.Inspection(3));
    }
}
