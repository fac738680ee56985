using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests.State;

public sealed class VehicleStateTests
{
    private static readonly InspectionStarted Start = new("ignition-breakerless-6", 1, "", Some.Technician, null, null);

    [Fact]
    public void Vehicle_is_what_was_said_of_it_last()
    {
        var engine = new EngineLayout(6, [1, 5, 3, 6, 2, 4], RotorRotation.Clockwise);

        var state = After(
            new VehicleAdded("Otter", "old", null),
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
        Assert.Equal([("plug-gap", 0.7)], state.Limits.Select(pair => (pair.Key, pair.Value.Lower!.Value)));
        Assert.Equal(10, state.NextSequence);
    }

    [Fact]
    public void Wear_parts_are_fitted_anew_and_retired()
    {
        var state = After(
            new VehicleAdded("Otter", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartAdded("Rotor", new(null, 30000, "km"), new(new(2024, 5, 1), null, null)),
            new WearPartFitted(2, new(new(2026, 5, 1), 95000, "km")),
            new WearPartFitted(99, new(new(2026, 5, 1), 95000, "km")),
            new WearPartRetired(3));

        var plugs = Assert.Single(state.WearParts);
        Assert.Equal((2, "Spark plugs", 2), (plugs.Number, plugs.Name, plugs.Fittings.Count));
        Assert.Equal(95000, plugs.Fitted.Odometer);
    }

    [Fact]
    public void Interval_set_anew_stands_and_the_fittings_stay()
    {
        var state = After(
            new VehicleAdded("Otter", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartIntervalSet(2, new(null, 30000, "km")),
            new WearPartIntervalSet(99, new(1, null, null)));

        var plugs = Assert.Single(state.WearParts);
        Assert.Equal(new WearInterval(null, 30000, "km"), plugs.Interval);
        Assert.Equal(new DateOnly(2024, 5, 1), plugs.Fitted.On);
    }

    [Fact]
    public void What_was_no_new_one_is_known_of_its_part_until_it_is_said_anew()
    {
        var state = After(
            new VehicleAdded("Otter", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartAdded("Rotor", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartNotRenewed(3, 20, "A used one was put in."),
            new WearPartNotRenewed(3, 30, "Said of another car."),
            new WearPartNotRenewed(99, 40, "Nothing."));

        Assert.Null(state.WearParts[0].NotRenewed);
        Assert.Equal((5, 30, "Said of another car."), (state.WearParts[1].NotRenewed!.Sequence, state.WearParts[1].NotRenewed!.Body.UpTo, state.WearParts[1].NotRenewed!.Body.Reason));
    }

    [Fact]
    public void A_fitting_recorded_late_does_not_stand_in_for_a_newer_one()
    {
        var part = new WearPart(2, "Rotor", new(24, null, null), [new(new(2026, 5, 1), null, null), new(new(2023, 5, 1), null, null)]);

        Assert.Equal(new DateOnly(2026, 5, 1), part.Fitted.On);
    }

    [Fact]
    public void Vehicle_without_a_first_entry_is_called_by_its_id() =>
        Assert.Equal("otter", VehicleState.Before("otter").Name);

    [Fact]
    public void Entry_without_a_body_counts_and_changes_nothing_else()
    {
        var before = After(new VehicleAdded("Otter", "", null));

        var after = before.Apply(Entry(2, null));

        Assert.Equal((3, "hash 2"), (after.NextSequence, after.LastHash));
        Assert.Equal((before.Name, before.Inspections, before.Limits), (after.Name, after.Inspections, after.Limits));
    }

    [Fact]
    public void Inspection_holds_what_was_captured_and_recorded_in_it()
    {
        var reading = new ReadingDecided(2, "plug-gap", 3, new Bracket(0.6, 0.7), "0.6", null, null, null, []);

        var inspection = After(
            new VehicleAdded("Otter", "", null),
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
    public void Entry_of_one_inspection_leaves_the_others_alone()
    {
        var state = After(
            new VehicleAdded("Otter", "", null),
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

    [Fact]
    public void Voice_note_waits_until_it_is_transcribed()
    {
        VehicleState[] states =
        [
            .. Steps(new RecordingKept(2, Some.Recording, 1, null), new TranscriptFailed(3, "no model"),
                new TranscriptMade(3, "nine", [], true, "m", "")),
        ];
        var notes = states.Select(state => state.OpenInspection!.FindVoiceNote(3)!).ToArray();

        Assert.Equal([true, false, false], notes.Select(note => note.IsWaiting));
        Assert.Equal([null, "no model", null], notes.Select(note => note.Failure));
        Assert.Equal([null, null, "nine"], notes.Select(note => note.Transcript?.Text));
        Assert.Null(notes[2].Proposals);
    }

    [Fact]
    public void Voice_note_that_failed_or_was_cancelled_waits_again_once_asked_for()
    {
        VehicleState[] states =
        [
            .. Steps(new RecordingKept(2, Some.Recording, 1, null), new TranscriptCancelled(3), new TranscriptAsked(3),
                new TranscriptFailed(3, "no model"), new TranscriptAsked(3), new TranscriptMade(3, "nine", [], true, "m", "")),
        ];
        var notes = states.Select(state => state.OpenInspection!.FindVoiceNote(3)!).ToArray();

        Assert.Equal([true, false, true, false, true, false], notes.Select(note => note.IsWaiting));
        Assert.Equal([false, true, false, true, false, false], notes.Select(note => note.IsSetAside));
        Assert.Equal([null, null, null, "no model", null, null], notes.Select(note => note.Failure));
    }

    [Fact]
    public void Proposals_are_open_until_confirmed_or_dropped()
    {
        var state = Apply(
            Inspecting(),
            new RecordingKept(2, Some.Recording, 1, null),
            new FindingsProposed(3, [Proposed, Proposed, Proposed, Proposed, Proposed]),
            new ReadingDecided(2, "plug-gap", 3, new Bracket(0.6, 0.7), "", null, null, null, [new(3, 0), new(3, 1)]),
            new FindingDropped(new(3, 2)),
            new ObservationMade(2, "plug-condition", 3, "burnt", false, new(3, 3)),
            new FindingDropped(new(3, 99)),
            new FindingDropped(new(44, 0)));

        Assert.Equal(
            [
                (ProposalState.Confirmed, 5L), (ProposalState.Confirmed, 5L), (ProposalState.Dropped, null),
                (ProposalState.Confirmed, 7L), (ProposalState.Open, null),
            ],
            state.OpenInspection!.FindVoiceNote(3)!.Proposals!.Select(one => (one.State, one.RecordedAs)));
    }

    [Fact]
    public void Action_that_confirms_a_proposal_settles_it()
    {
        var state = Apply(
            Inspecting(),
            new RecordingKept(2, Some.Recording, 1, null),
            new FindingsProposed(3, [Proposed]),
            new ActionDone(2, "plug-condition", 3, "replaced", new(3, 0)));

        Assert.Equal(5, state.OpenInspection!.FindVoiceNote(3)!.Proposals![0].RecordedAs);
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

    [Fact]
    public void Workshop_lists_the_instruments_in_use()
    {
        var state = new EntryBody[]
        {
            new InstrumentAdded(Some.Meter),
            new InstrumentAdded(Some.Meter with { Id = "gauge-1" }),
            new InstrumentAdded(Some.Meter with { Id = "gauge-2" }),
            new InstrumentAdded(Some.Meter with { Name = "New meter" }),
            new InstrumentRetired("gauge-2"),
        }.Aggregate(WorkshopState.Empty, (now, body) => now.Apply(Entry(1, body)));

        Assert.Equal(["gauge-1", "meter-1"], state.Instruments.Select(instrument => instrument.Id));
        Assert.Equal("New meter", state.Instruments[1].Name);
    }

    [Fact]
    public void Workshop_lists_its_own_words_until_they_are_removed()
    {
        var state = new EntryBody[]
        {
            new OwnWordAdded("sheet", "cooked", "lead-condition", "burnt"),
            new OwnWordAdded("sheet", "sparkler", "plug-condition", null),
            new OwnWordRemoved(1),
            new OwnWordRemoved(9),
        }.Select((body, i) => Entry(i + 1, body)).Aggregate(WorkshopState.Empty, (now, entry) => now.Apply(entry));

        var word = Assert.Single(state.Words);
        Assert.Equal((2, "sparkler", "Tess Okafor"), (word.Number, word.Body.Phrase, word.Actor));
    }

    private static ProposedFinding Proposed =>
        new("reading", "plug-gap", 3, 0.65, null, null, null, false, null, "words", 0, 5, null);

    private static VehicleState Inspecting() => After(new VehicleAdded("Otter", "", null), Start);

    private static VehicleState After(params IReadOnlyList<EntryBody> bodies) => Apply(VehicleState.Before("otter"), bodies);

    private static VehicleState Apply(VehicleState state, params IReadOnlyList<EntryBody> bodies) =>
        bodies.Aggregate(state, (now, body) => now.Apply(Entry(now.NextSequence, body)));

    private static IEnumerable<VehicleState> Steps(params IReadOnlyList<EntryBody> bodies)
    {
        var state = Inspecting();
        foreach (var body in bodies)
        {
            yield return state = Apply(state, body);
        }
    }

    private static JournalEntry Entry(long sequence, EntryBody? body) => new(
        sequence, Some.Clock().GetUtcNow(), TimeSpan.FromHours(1), Some.Technician, body, "", 1, "", $"hash {sequence}");
}
