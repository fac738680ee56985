using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>What the journal says of one inspection. Immutable; withdrawn entries are left out of the lists.</summary>
public sealed record InspectionState
{
    private InspectionState(long number, DateTimeOffset started, InspectionStarted how)
    {
        Number = number;
        Started = started;
        How = how;
    }

    /// <summary>Its number: the sequence of its first entry.</summary>
    public long Number { get; }

    /// <summary>When it began, in the workshop's time.</summary>
    public DateTimeOffset Started { get; }

    /// <summary>Sheet, technician and odometer.</summary>
    public InspectionStarted How { get; }

    /// <summary>When it was closed, in the workshop's time; null while open.</summary>
    public DateTimeOffset? Closed { get; private init; }

    /// <summary>Whether it is closed. A closed inspection is amended, never edited.</summary>
    public bool IsClosed => Closed is not null;

    /// <summary>Voice notes, photos and typed notes, oldest first.</summary>
    public ImmutableList<Capture> Captures { get; private init; } = [];

    /// <summary>Readings that count, oldest first.</summary>
    public ImmutableList<Recorded<ReadingDecided>> Readings { get; private init; } = [];

    /// <summary>Observations that count, oldest first.</summary>
    public ImmutableList<Recorded<ObservationMade>> Observations { get; private init; } = [];

    /// <summary>Actions that count, oldest first.</summary>
    public ImmutableList<Recorded<ActionDone>> Actions { get; private init; } = [];

    /// <summary>Loose ends, oldest first, tied ones included.</summary>
    public ImmutableList<LooseEnd> LooseEnds { get; private init; } = [];

    /// <summary>Checks left out, with their reasons, by check id.</summary>
    public ImmutableDictionary<string, string> LeftOut { get; private init; } =
        ImmutableDictionary<string, string>.Empty;

    /// <summary>Loose ends that are still open.</summary>
    public IEnumerable<LooseEnd> OpenLooseEnds => LooseEnds.Where(end => end.IsOpen);

    /// <summary>Voice notes, oldest first.</summary>
    public IEnumerable<VoiceNote> VoiceNotes => Captures.OfType<VoiceNote>();

    /// <summary>Photos, oldest first.</summary>
    public IEnumerable<PhotoCapture> Photos => Captures.OfType<PhotoCapture>();

    /// <summary>The voice note with this sequence, or null.</summary>
    public VoiceNote? FindVoiceNote(long sequence) => VoiceNotes.FirstOrDefault(note => note.Sequence == sequence);

    internal static InspectionState Begin(JournalEntry entry, InspectionStarted how) =>
        new(entry.Sequence, entry.LocalTime, how);

    /// <summary>The state after one more entry; entries of other inspections change nothing.</summary>
    internal InspectionState Apply(JournalEntry entry) => entry.Body switch
    {
        RecordingKept kept when kept.Inspection == Number => Add(VoiceNote.Kept(entry, kept)),
        PhotoKept photo when photo.Inspection == Number => Add(new PhotoCapture(entry.Sequence, entry.LocalTime, photo)),
        NoteWritten note when note.Inspection == Number => Add(new TypedNote(entry.Sequence, entry.LocalTime, note)),
        TranscriptMade made => ChangeNote(made.Recording, note => note with { Transcript = made, Failure = null, IsCancelled = false }),
        TranscriptFailed failed => ChangeNote(failed.Recording, note => note with { Failure = failed.Problem }),
        TranscriptCancelled cancelled => ChangeNote(cancelled.Recording, note => note with { IsCancelled = true }),
        TranscriptAsked asked => ChangeNote(asked.Recording, note => note with { Failure = null, IsCancelled = false }),
        FindingsProposed proposed => ChangeNote(proposed.Recording, note => note.Propose(proposed.Findings)),
        FindingDropped dropped => Settle(dropped.Finding, ProposalState.Dropped, entry.Sequence),
        CommandHeard heard => ChangeNote(heard.Recording, note => note with { Command = heard }),
        CommandDone done => ChangeNote(done.Recording, note => note with { Done = done }),
        ReadingDecided reading when reading.Inspection == Number =>
            Record(entry, reading.Check) with { Readings = Readings.Add(new(entry.Sequence, entry.LocalTime, reading)) },
        ObservationMade seen when seen.Inspection == Number =>
            Record(entry, seen.Check) with { Observations = Observations.Add(new(entry.Sequence, entry.LocalTime, seen)) },
        ActionDone done when done.Inspection == Number =>
            Record(entry, null) with { Actions = Actions.Add(new(entry.Sequence, entry.LocalTime, done)) },
        LooseEndOpened opened when opened.Inspection == Number =>
            this with { LooseEnds = LooseEnds.Add(new(entry.Sequence, entry.LocalTime, opened, null, null)) },
        LooseEndTied tied => ChangeLooseEnd(tied.LooseEnd, end => end with { Tied = entry.LocalTime }),
        LooseEndWaived waived => ChangeLooseEnd(waived.LooseEnd, end => end with { WaivedBecause = waived.Reason }),
        CheckLeftOut left when left.Inspection == Number => this with { LeftOut = LeftOut.SetItem(left.Check, left.Reason) },
        EntryWithdrawn withdrawn => Withdraw(withdrawn.Entry),
        InspectionClosed closed when closed.Inspection == Number => this with { Closed = entry.LocalTime },
        _ => this,
    };

    private InspectionState Add(Capture capture) => this with { Captures = Captures.Add(capture) };

    /// <summary>A record settles the proposals it confirms, and a check that has one is no longer left out.</summary>
    private InspectionState Record(JournalEntry entry, string? check)
    {
        IReadOnlyList<FindingReference> from = entry.Body switch
        {
            ReadingDecided reading => reading.From,
            ObservationMade { From: { } finding } => [finding],
            ActionDone { From: { } finding } => [finding],
            _ => [],
        };
        var settled = from.Aggregate(
            this, (state, finding) => state.Settle(finding, ProposalState.Confirmed, entry.Sequence));
        return check is null ? settled : settled with { LeftOut = settled.LeftOut.Remove(check) };
    }

    private InspectionState Settle(FindingReference finding, ProposalState state, long settledAt) =>
        ChangeNote(finding.Recording, note => note.Settle(finding.Index, state, settledAt));

    private InspectionState ChangeNote(long sequence, Func<VoiceNote, VoiceNote> change)
    {
        var at = Captures.FindIndex(capture => capture.Sequence == sequence && capture is VoiceNote);
        return at < 0 ? this : this with { Captures = Captures.SetItem(at, change((VoiceNote)Captures[at])) };
    }

    private InspectionState ChangeLooseEnd(long sequence, Func<LooseEnd, LooseEnd> change)
    {
        var at = LooseEnds.FindIndex(end => end.Sequence == sequence);
        return at < 0 ? this : this with { LooseEnds = LooseEnds.SetItem(at, change(LooseEnds[at])) };
    }

    private InspectionState Withdraw(long sequence) => this with
    {
        Readings = Readings.RemoveAll(reading => reading.Sequence == sequence),
        Observations = Observations.RemoveAll(seen => seen.Sequence == sequence),
        Actions = Actions.RemoveAll(done => done.Sequence == sequence),
        Captures = Captures.RemoveAll(capture => capture.Sequence == sequence && capture is not VoiceNote),
    };
}
