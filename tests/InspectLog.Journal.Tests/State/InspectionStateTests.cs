using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;
using static InspectLog.Journal.Tests.Support.Written;

namespace InspectLog.Journal.Tests.State;

/// <summary>What an inspection holds of its entries.</summary>
public sealed class InspectionStateTests
{
    [Fact]
    public void Inspection_holds_what_was_captured_and_recorded_in_it()
    {
        var reading = new ReadingDecided(2, "plug-gap", 3, new Bracket(0.6, 0.7), "0.6", null, null, null, []);

        var inspection = After(
            new VehicleAdded("Teasel", "", null),
            Start,
            new RecordingKept(2, Some.Recording, 1, null),
            new PhotoKept(2, Some.Photo, 1, 1, null, null),
            new NoteWritten(2, null, "noted"),
            reading,
            new ObservationMade(2, "plug-condition", 3, "burnt", false, null),
            new ActionDone(2, "plug-condition", 3, "replaced", null)).OpenInspection!;

        Assert.Equal((2, false), (inspection.Number, inspection.IsClosed));
        Assert.Equal([typeof(VoiceNote), typeof(PhotoCapture), typeof(TypedNote)], inspection.Captures.Select(c => c.GetType()));
        Assert.Equal(3, Assert.Single(inspection.VoiceNotes).Sequence);
        Assert.Equal(Some.Photo, Assert.Single(inspection.Photos).Photo.Media);
        Assert.Equal((6, reading), (Assert.Single(inspection.Readings).Sequence, inspection.Readings[0].Body));
        Assert.Equal("burnt", Assert.Single(inspection.Observations).Body.Condition);
        Assert.Equal("replaced", Assert.Single(inspection.Actions).Body.Action);
        Assert.Equal(TimeSpan.FromHours(1), inspection.Readings[0].Time.Offset);
    }

    [Fact]
    public void Loose_end_is_open_until_it_is_tied_or_waived()
    {
        var state = Apply(
            Inspecting(),
            new LooseEndOpened(2, "coil lead off", "put it back", null, null, null),
            new LooseEndOpened(2, "ignition on", "switch it off", null, null, null),
            new LooseEndOpened(2, "cap off", "put it back", null, null, null),
            new LooseEndTied(3),
            new LooseEndWaived(4, "the car stays"),
            new LooseEndTied(44));

        Assert.Equal([false, false, true], state.OpenInspection!.LooseEnds.Select(end => end.IsOpen));
        Assert.Equal("cap off", Assert.Single(state.OpenInspection.OpenLooseEnds).What.Text);
        Assert.NotNull(state.OpenInspection.LooseEnds[0].Tied);
        Assert.Equal("the car stays", state.OpenInspection.LooseEnds[1].WaivedBecause);
    }

    [Fact]
    public void Check_is_left_out_until_something_is_recorded_for_it()
    {
        var state = Apply(
            Inspecting(),
            new CheckLeftOut(2, "plug-gap", "no gauge"),
            new CheckLeftOut(2, "spark", "no battery"),
            new CheckLeftOut(2, "lead-routing", "too dark"),
            new ReadingDecided(2, "plug-gap", 3, new Bracket(0.6, 0.7), "", null, null, null, []),
            new ObservationMade(2, "spark", 3, "none", false, null));

        Assert.Equal([KeyValuePair.Create("lead-routing", "too dark")], state.OpenInspection!.LeftOut);
    }

    [Fact]
    public void What_is_withdrawn_no_longer_counts_but_a_recording_stays()
    {
        var state = Apply(
            Inspecting(),
            new RecordingKept(2, Some.Recording, 1, null),
            new PhotoKept(2, Some.Photo, 1, 1, null, null),
            new NoteWritten(2, null, "noted"),
            new ReadingDecided(2, "plug-gap", 3, new Bracket(0.6, 0.7), "", null, null, null, []),
            new ObservationMade(2, "spark", 3, "none", false, null),
            new ActionDone(2, "plug-condition", 3, "replaced", null));

        var after = Apply(state, [.. Enumerable.Range(3, 6).Select(entry => new EntryWithdrawn(entry, "mistake"))]).OpenInspection!;

        Assert.IsType<VoiceNote>(Assert.Single(after.Captures));
        Assert.Empty(after.Readings);
        Assert.Empty(after.Observations);
        Assert.Empty(after.Actions);
    }
}
