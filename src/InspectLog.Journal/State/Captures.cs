using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>A record with where and when it stands in the journal.</summary>
/// <param name="Sequence">Sequence of its entry.</param>
/// <param name="Time">When, in the workshop's time.</param>
/// <param name="Body">What it says.</param>
public sealed record Recorded<T>(long Sequence, DateTimeOffset Time, T Body)
    where T : EntryBody;

/// <summary>Something captured on the bench: a voice note, a photo or a typed note.</summary>
/// <param name="Sequence">Sequence of its entry.</param>
/// <param name="Time">When, in the workshop's time.</param>
public abstract record Capture(long Sequence, DateTimeOffset Time);

/// <summary>A photo.</summary>
public sealed record PhotoCapture(long Sequence, DateTimeOffset Time, PhotoKept Photo) : Capture(Sequence, Time);

/// <summary>A typed note.</summary>
public sealed record TypedNote(long Sequence, DateTimeOffset Time, NoteWritten Note) : Capture(Sequence, Time);

/// <summary>A voice note, with what became of it.</summary>
public sealed record VoiceNote : Capture
{
    private VoiceNote(long sequence, DateTimeOffset time, RecordingKept recording)
        : base(sequence, time) => Recording = recording;

    /// <summary>The recording.</summary>
    public RecordingKept Recording { get; }

    /// <summary>Its transcript; null while it waits or when it failed.</summary>
    public TranscriptMade? Transcript { get; internal init; }

    /// <summary>Why it could not be transcribed; null otherwise.</summary>
    public string? Failure { get; internal init; }

    /// <summary>Whether somebody does not want it transcribed.</summary>
    public bool IsCancelled { get; internal init; }

    /// <summary>What it seems to say; null until its transcript was read.</summary>
    public ImmutableList<Proposal>? Proposals { get; private init; }

    /// <summary>The command it is; null when it is none or was not read yet.</summary>
    public CommandHeard? Command { get; internal init; }

    /// <summary>What its command led to; null until it was obeyed.</summary>
    public CommandDone? Done { get; internal init; }

    /// <summary>Whether it is still to be transcribed.</summary>
    public bool IsWaiting => Transcript is null && Failure is null && !IsCancelled;

    /// <summary>Whether it has no transcript and none will be made unless somebody asks.</summary>
    public bool IsSetAside => Transcript is null && !IsWaiting;

    /// <summary>Whether hands-free listening cut it out of what it heard.</summary>
    public bool IsHandsFree => Recording is UtteranceKept;

    internal static VoiceNote Kept(JournalEntry entry, RecordingKept recording) =>
        new(entry.Sequence, entry.LocalTime, recording);

    internal VoiceNote Propose(IReadOnlyList<ProposedFinding> findings) => this with
    {
        Proposals = [.. findings.Select((finding, index) =>
            new Proposal(new(Sequence, index), finding, ProposalState.Open, null))],
    };

    internal VoiceNote Settle(int index, ProposalState state, long settledAt) =>
        Proposals is null || index < 0 || index >= Proposals.Count
            ? this
            : this with
            {
                Proposals = Proposals.SetItem(index, Proposals[index] with { State = state, SettledAt = settledAt }),
            };
}

/// <summary>A proposal and what became of it.</summary>
/// <param name="Reference">Which.</param>
/// <param name="Finding">What it says.</param>
/// <param name="State">What became of it.</param>
/// <param name="SettledAt">Sequence of the entry that confirmed or dropped it; null while it is open.</param>
public sealed record Proposal(
    FindingReference Reference, ProposedFinding Finding, ProposalState State, long? SettledAt)
{
    /// <summary>Sequence of the entry that confirmed it; null otherwise.</summary>
    public long? RecordedAs => State == ProposalState.Confirmed ? SettledAt : null;
}

/// <summary>What became of a proposal.</summary>
public enum ProposalState
{
    /// <summary>Nobody has looked at it yet.</summary>
    Open,

    /// <summary>Confirmed, as it was or changed.</summary>
    Confirmed,

    /// <summary>Dropped.</summary>
    Dropped,
}

/// <summary>Something disconnected, removed, switched on or undone.</summary>
/// <param name="Sequence">Sequence of the entry that opened it.</param>
/// <param name="Opened">When, in the workshop's time.</param>
/// <param name="What">What it is.</param>
/// <param name="Tied">When it was put right; null otherwise.</param>
/// <param name="WaivedBecause">Why it stays; null otherwise.</param>
public sealed record LooseEnd(
    long Sequence, DateTimeOffset Opened, LooseEndOpened What, DateTimeOffset? Tied, string? WaivedBecause)
{
    /// <summary>Whether it still has to be put right.</summary>
    public bool IsOpen => Tied is null && WaivedBecause is null;
}
