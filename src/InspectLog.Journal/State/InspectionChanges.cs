using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <content>What each kind of entry changes.</content>
public sealed partial record InspectionState
{
    /// <summary>The state after one more entry; entries of other inspections change nothing.</summary>
    internal InspectionState Apply(JournalEntry entry)
    {
        var next = Changed(entry);

        // A capture's stamp is noted, so that the same capture sent again is known.
        return !ReferenceEquals(next, this) && entry.Body?.Stamp is { } stamp && !Stamps.ContainsKey(stamp.Id)
            ? next with { Stamps = Stamps.Add(stamp.Id, entry.Sequence) }
            : next;
    }

    /// <summary>The state after an entry that came in from elsewhere: a recording it brings, or that was asked for there, waits
    /// until somebody asks here.</summary>
    internal InspectionState WithWordsNotAskedFor(JournalEntry entry) => entry.Body switch
    {
        RecordingKept kept when kept.Inspection == Number => ChangeVoiceNote(entry.Sequence, note => note with { CameInUnasked = true }),
        TranscriptAsked asked => ChangeVoiceNote(asked.Recording, note => note with { CameInUnasked = true }),
        _ => this,
    };

    private InspectionState Changed(JournalEntry entry) => entry.Body switch
    {
        AmendableBody { Amends: { } first } body => Amend(entry, first, body),
        RecordingKept kept when kept.Inspection == Number => Add(VoiceNote.Kept(entry, kept) with { History = Begun(entry) }),
        PhotoKept photo when photo.Inspection == Number =>
            Add(new PhotoCapture(entry.Sequence, entry.CapturedTime, photo) { History = Begun(entry) }),
        NoteWritten note when note.Inspection == Number =>
            Add(new TypedNote(entry.Sequence, entry.CapturedTime, note) { History = Begun(entry) }),
        PhotoMarked marked when KeptCaptures.Find(marked.Photo) is PhotoCapture => this with { KeptMarks = KeptMarks.Add(First(entry, marked)) },
        TranscriptMade made => ChangeVoiceNote(made.Recording, note => note with
        {
            Transcript = made, TranscriptEntry = entry.Sequence, Failure = null, IsCancelled = false,
        }),
        WordsCorrected corrected => ChangeVoiceNote(corrected.Recording, note => note.CanBeCorrected ? Corrected(note, entry, corrected) : note),
        TranscriptFailed failed => ChangeVoiceNote(failed.Recording, note => note with { Failure = failed.Problem }),
        TranscriptCancelled cancelled => ChangeVoiceNote(cancelled.Recording, note => note with { IsCancelled = true }),
        TranscriptAsked asked => ChangeVoiceNote(asked.Recording, note => note with { Failure = null, IsCancelled = false, CameInUnasked = false }),
        FindingsProposed proposed => ChangeNote(proposed.Recording, note => note.Propose(proposed.Findings, entry.Sequence)),
        FindingDropped dropped => Settle(dropped.Finding, ProposalState.Dropped, entry),
        FindingReopened reopened => ChangeNote(reopened.Finding.Recording, note => note.Reopen(reopened.Finding.Index)),
        CommandHeard heard => ChangeVoiceNote(heard.Recording, note => note with { Command = heard }),
        CommandDone done => ChangeVoiceNote(done.Recording, note => note with { Done = done }),
        ReadingDecided reading when reading.Inspection == Number =>
            Record(entry, reading.Check) with { KeptReadings = KeptReadings.Add(First(entry, reading)) },
        ObservationMade seen when seen.Inspection == Number =>
            Record(entry, seen.Check) with { KeptObservations = KeptObservations.Add(First(entry, seen)) },
        ActionDone done when done.Inspection == Number =>
            Record(entry, null) with { KeptActions = KeptActions.Add(First(entry, done)) },
        LooseEndOpened opened when opened.Inspection == Number =>
            this with { KeptLooseEnds = KeptLooseEnds.Add(new(entry.Sequence, entry.CapturedTime, opened, null, null) { History = Begun(entry) with { IsLater = false } }) },
        LooseEndTied tied => ChangeLooseEnd(tied.LooseEnd, end => end with
        {
            Tied = entry.CapturedTime, TiedBy = entry.Sequence, TiedByRecord = tied.Record,
        }),
        LooseEndWaived waived => ChangeLooseEnd(waived.LooseEnd, end => end with { Waived = entry.CapturedTime, WaivedBecause = waived.Reason }),
        CheckLeftOut left when left.Inspection == Number => this with { LeftOut = LeftOut.SetItem(left.Check, left.Reason) },
        UrgencyJudged judged when judged.Inspection == Number =>
            this with { Urgencies = Urgencies.SetItem(judged.Check, new(judged.Urgency, entry.Actor, entry.LocalTime)) },
        EntryWithdrawn withdrawn => Withdraw(entry, withdrawn),
        EntryRestored restored => Restore(entry, restored),
        ReportChoice choice => ChangeHistory(choice.Entry, history => history with { IsLeftOutOfReport = !choice.Shown }),
        InspectionClosed closed when closed.Inspection == Number => this with { Closed = entry.LocalTime },
        _ => this,
    };

    private History Begun(JournalEntry entry) => Begun(entry, IsClosed);

    private static History Begun(JournalEntry entry, bool isLater) => new(entry.Actor)
    {
        IsLater = isLater,
        Came = entry.CapturedTime == entry.LocalTime ? null : entry.LocalTime,
    };

    private Recorded<T> First<T>(JournalEntry entry, T body)
        where T : EntryBody => new(entry.Sequence, entry.CapturedTime, body) { History = Begun(entry) };

    private InspectionState Add(Capture capture) => this with { KeptCaptures = KeptCaptures.Add(capture) };

    /// <summary>A record settles the proposals it confirms, and a check that has one is no longer left out.</summary>
    private InspectionState Record(JournalEntry entry, string? check)
    {
        var settled = SourcesOf(entry.Body!).Aggregate(
            this, (state, finding) => state.Settle(finding, ProposalState.Confirmed, entry));
        return check is null || IsClosed ? settled : settled with { LeftOut = settled.LeftOut.Remove(check) };
    }

    private InspectionState Settle(FindingReference finding, ProposalState state, JournalEntry entry) =>
        ChangeNote(finding.Recording, note => note.Settle(
            finding.Index, state, entry.Sequence, IsClosed ? new(entry.LocalTime, entry.Actor) : null));

    private InspectionState ChangeNote(long sequence, Func<WordedNote, WordedNote> change) =>
        ChangeCapture(sequence, capture => capture is WordedNote note ? change(note) : capture);

    private InspectionState ChangeVoiceNote(long sequence, Func<VoiceNote, VoiceNote> change) =>
        ChangeCapture(sequence, capture => capture is VoiceNote note ? change(note) : capture);

    private InspectionState ChangeCapture(long sequence, Func<Capture, Capture> change) =>
        KeptCaptures.Change(sequence, change) is var captures && ReferenceEquals(captures, KeptCaptures)
            ? this
            : this with { KeptCaptures = captures };

    private InspectionState ChangeLooseEnd(long sequence, Func<LooseEnd, LooseEnd> change) =>
        KeptLooseEnds.Change(sequence, change) is var ends && ReferenceEquals(ends, KeptLooseEnds)
            ? this
            : this with { KeptLooseEnds = ends };
}
