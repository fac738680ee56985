using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.State;

/// <summary>A finding dropped by mistake waits again, and words that were misheard are put right; what stood there stays.</summary>
public sealed class TakenBackTests
{
    private static readonly ProposedFinding Found =
        new("observation", "spark", 1, null, null, null, "present", false, null, "spark", 0, 5, []);

    private static readonly EntryBody[] Heard =
    [
        new RecordingKept(2, Some.Recording, 1, "spark"), // entry 3
        new TranscriptMade(3, "bark one, spark two", [], true, "m", ""),
        new FindingsProposed(3, [Found, Found with { Cylinder = 2 }]),
    ];

    [Fact]
    public void Dropped_finding_that_is_reopened_stands_as_it_was()
    {
        var before = Note(Written.State(Heard)).Proposals!;
        var dropped = Note(Written.State([.. Heard, new FindingDropped(new(3, 0))])).Proposals!;
        var again = Note(Written.State([.. Heard, new FindingDropped(new(3, 0)), new FindingReopened(new(3, 0))])).Proposals!;

        Assert.True(dropped[0].CanBeReopened);
        Assert.Equal(before.Select(one => (one.Reference, one.State, one.SettledAt)), again.Select(one => (one.Reference, one.State, one.SettledAt)));
    }

    [Fact]
    public void Finding_dropped_and_reopened_after_closing_waits_and_says_nothing_of_the_drop()
    {
        var note = Note(Written.State([.. Heard, new InspectionClosed(2), new FindingDropped(new(3, 0)), new FindingReopened(new(3, 0))]));

        Assert.Equal((ProposalState.Open, null), (note.Proposals![0].State, note.Proposals[0].Later));
    }

    [Fact]
    public void What_was_confirmed_or_read_anew_is_not_reopened()
    {
        var note = Note(Written.State(
        [
            .. Heard, new ObservationMade(2, "spark", 1, "present", false, new(3, 0)), new FindingsProposed(3, []),
            new FindingReopened(new(3, 0)), new FindingReopened(new(3, 1)), new FindingReopened(new(3, 9)),
        ]));

        Assert.Equal([ProposalState.Confirmed, ProposalState.Dropped], note.Proposals!.Select(one => one.State));
        Assert.All(note.Proposals!, one => Assert.False(one.CanBeReopened));
    }

    [Fact]
    public void Corrected_words_stand_in_place_of_what_was_heard_and_that_stays()
    {
        var note = Note(Written.State(
        [
            .. Heard, new ObservationMade(2, "spark", 2, "present", false, new(3, 1)), // entry 6
            new WordsCorrected(3, "spark one, spark two"), new FindingsProposed(3, [Found]),
            new WordsCorrected(3, "spark three, spark two"), new FindingsProposed(3, [Found with { Cylinder = 3 }]),
        ]));

        Assert.Equal(("spark three, spark two", "bark one, spark two"), (note.Words, note.Transcript!.Text));
        Assert.Equal(
            ["bark one, spark two", "spark one, spark two"],
            note.History.Past.Select(past => past.Says is TranscriptMade heard ? heard.Text : ((WordsCorrected)past.Says).Text));
        Assert.Equal((Some.Technician, 9), (note.History.LastChange!.By, note.History.LastChange.ChangedBy));
        Assert.Equal(
            [ProposalState.Dropped, ProposalState.Confirmed, ProposalState.Dropped, ProposalState.Open],
            note.Proposals!.Select(one => one.State));
    }

    [Fact]
    public void Words_of_what_was_not_read_is_a_command_or_was_withdrawn_are_not_corrected()
    {
        var corrected = new WordsCorrected(3, "spark one");

        Assert.Null(Note(Written.State(Heard[0], corrected)).Words);
        Assert.Equal("bark one, spark two", Note(Written.State([.. Heard, new CommandHeard(3, SpokenCommand.Confirm, null), corrected])).Words);
        var withdrawn = Written.State([.. Heard.Take(2), new FindingsProposed(3, []), new EntryWithdrawn(3, "misheard"), corrected]);
        Assert.Equal("bark one, spark two", ((VoiceNote)withdrawn.Find(3)!).Words);
    }

    [Fact]
    public void Search_marks_what_was_heard_as_put_right()
    {
        var vehicle = Written.Apply(Written.Inspecting(), [.. Heard, new WordsCorrected(3, "spark one")]);

        Assert.Equal(6, Assert.IsType<PutRightSince>(EntryMarks.Of(vehicle).At(4)).Entry);
        Assert.Null(EntryMarks.Of(vehicle).At(6));
    }

    private static VoiceNote Note(InspectionState state) => (VoiceNote)state.FindNote(3)!;
}
