using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;
using static InspectLog.Journal.Tests.Support.Written;

namespace InspectLog.Journal.Tests.State;

/// <summary>What becomes of a voice note: its words, and what it was understood to say.</summary>
public sealed class VoiceNoteTests
{
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
    public void Voice_note_is_withdrawn_and_restored_once_its_words_are_all_there_is_of_it()
    {
        VehicleState[] states =
        [
            .. Steps(new RecordingKept(2, Some.Recording, 1, null), new EntryWithdrawn(3, "misheard"),
                new TranscriptMade(3, "nine", [], true, "m", ""), new EntryWithdrawn(3, "misheard"),
                new FindingsProposed(3, [Proposed]), new EntryWithdrawn(3, "misheard"),
                new FindingDropped(new(3, 0)), new EntryWithdrawn(3, "misheard"), new EntryRestored(3)),
        ];

        Assert.Equal(
            [true, true, true, true, true, true, true, false, true],
            states.TakeLast(9).Select(state => state.OpenInspection!.FindVoiceNote(3) is not null));
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

    private static ProposedFinding Proposed =>
        new("reading", "plug-gap", 3, 0.65, null, null, null, false, null, "words", 0, 5, []);

    private static IEnumerable<VehicleState> Steps(params IReadOnlyList<EntryBody> bodies)
    {
        var state = Inspecting();
        foreach (var body in bodies)
        {
            yield return state = Apply(state, body);
        }
    }
}
