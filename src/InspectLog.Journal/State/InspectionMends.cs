using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <content>What was put right, withdrawn and restored.</content>
public sealed partial record InspectionState
{
    /// <summary>What an entry of the same kind says in the place of the first one. What was withdrawn counts again with
    /// it. An amendment of something else changes nothing.</summary>
    private InspectionState Amend(JournalEntry entry, long first, AmendableBody body) => body switch
    {
        ReadingDecided reading => ChangeKept(this, KeptReadings.Change(first, one => Amended(one, entry, reading))),
        ObservationMade seen => ChangeKept(this, KeptObservations.Change(first, one => Amended(one, entry, seen))),
        ActionDone done => ChangeKept(this, KeptActions.Change(first, one => Amended(one, entry, done))),
        PhotoKept photo => ChangeCapture(first, capture => capture is PhotoCapture one
            ? one with { Photo = photo, History = Amended(one, entry) }
            : capture),
        PhotoMarked marked => ChangeKept(this, KeptMarks.Change(first, one => Amended(one, entry, marked))),
        NoteWritten note => ChangeCapture(first, capture => capture is TypedNote one
            ? one with { Note = note, History = Amended(one, entry) }
            : capture),
        _ => this,
    };

    /// <summary>Withdraws something kept or a loose end, or takes back the tie of a loose end. A
    /// recording that findings rest on stays: it is evidence of what was confirmed from it.</summary>
    private InspectionState Withdraw(JournalEntry entry, EntryWithdrawn withdrawn) =>
        KeptLooseEnds.All.Find(end => end.TiedBy == withdrawn.Entry) is { } tied
            ? ChangeLooseEnd(tied.Sequence, end => end with
            {
                Tied = null, TiedBy = null, TiedByRecord = null, WithdrawnTies = [.. end.WithdrawnTies, (withdrawn.Entry, Withdrawn(entry, withdrawn))],
            })
            : Find(withdrawn.Entry) is VoiceNote { IsWordsAlone: false }
            ? this
            : ChangeHistory(withdrawn.Entry, history => history with { Withdrawn = Withdrawn(entry, withdrawn) });

    private Withdrawal Withdrawn(JournalEntry entry, EntryWithdrawn withdrawn) =>
        new(withdrawn.Reason, entry.LocalTime, entry.Actor, IsClosed, entry.Sequence);

    /// <summary>Lets something count again that was withdrawn.</summary>
    private InspectionState Restore(JournalEntry entry, EntryRestored restored) => ChangeHistory(
        restored.Entry,
        history => history.Withdrawn is not { } withdrawn ? history : history with
        {
            Withdrawn = null,
            Restored = [.. history.Restored, new(withdrawn, entry.Sequence, entry.LocalTime, entry.Actor, IsClosed)],
        });

    private InspectionState ChangeHistory(long sequence, Func<History, History> change)
    {
        var next = Find(sequence) switch
        {
            Capture => ChangeCapture(sequence, one => one with { History = change(one.History) }),
            Recorded<ReadingDecided> => ChangeKept(this, KeptReadings.Change(sequence, one => one with { History = change(one.History) })),
            Recorded<ObservationMade> => ChangeKept(this, KeptObservations.Change(sequence, one => one with { History = change(one.History) })),
            Recorded<PhotoMarked> => ChangeKept(this, KeptMarks.Change(sequence, one => one with { History = change(one.History) })),
            Recorded<ActionDone> => ChangeKept(this, KeptActions.Change(sequence, one => one with { History = change(one.History) })),
            _ => this,
        };
        return next.ChangeLooseEnd(sequence, end => end with { History = change(end.History) });
    }

    private Recorded<T> Amended<T>(Recorded<T> before, JournalEntry entry, T body)
        where T : EntryBody => before with { Body = body, History = Amended(before, entry) };

    private History Amended(IKept before, JournalEntry entry) => before.History with
    {
        Past = [.. before.History.Past, new(before.Says, entry.Sequence, entry.LocalTime, entry.Actor, IsClosed)],
        Withdrawn = null,
    };

    /// <summary>A voice note in other words. What it said before was heard, or was a correction itself.</summary>
    private VoiceNote Corrected(VoiceNote note, JournalEntry entry, WordsCorrected corrected) => note with
    {
        Corrected = corrected,
        History = note.History with
        {
            Past = [.. note.History.Past, new((EntryBody?)note.Corrected ?? note.Transcript!, entry.Sequence, entry.LocalTime, entry.Actor, IsClosed)],
        },
    };

    private static InspectionState ChangeKept(InspectionState state, KeptList<Recorded<ReadingDecided>> readings) =>
        readings == state.KeptReadings ? state : state with { KeptReadings = readings };

    private static InspectionState ChangeKept(InspectionState state, KeptList<Recorded<ObservationMade>> seen) =>
        seen == state.KeptObservations ? state : state with { KeptObservations = seen };

    private static InspectionState ChangeKept(InspectionState state, KeptList<Recorded<PhotoMarked>> marks) =>
        marks == state.KeptMarks ? state : state with { KeptMarks = marks };

    private static InspectionState ChangeKept(InspectionState state, KeptList<Recorded<ActionDone>> done) =>
        done == state.KeptActions ? state : state with { KeptActions = done };
}
