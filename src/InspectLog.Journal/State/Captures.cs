using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>Something captured on the bench: a voice note, a photo or a typed note.</summary>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="Time">When it was kept, in the workshop's time.</param>
public abstract record Capture(long Sequence, DateTimeOffset Time) : IKept
{
    /// <inheritdoc/>
    public History History { get; init; } = new("");

    /// <inheritdoc/>
    public abstract EntryBody Says { get; }
}

/// <summary>A photo.</summary>
public sealed record PhotoCapture(long Sequence, DateTimeOffset Time, PhotoKept Photo) : Capture(Sequence, Time)
{
    /// <inheritdoc/>
    public override EntryBody Says => Photo;
}

/// <summary>A note in words, spoken or typed, that may say findings.</summary>
public abstract record WordedNote(long Sequence, DateTimeOffset Time) : Capture(Sequence, Time)
{
    /// <summary>What it seems to say; null until it was read.</summary>
    public ImmutableList<Proposal>? Proposals { get; private init; }

    /// <summary>The check that was open on the bench; null when none was.</summary>
    public abstract string? OpenCheck { get; }

    /// <summary>Its words; null while they are not known, empty where there are none.</summary>
    public abstract string? Words { get; }

    /// <summary>Takes what it was understood to say. Where it was read before, in other words, what was open of that is
    /// no longer meant, and numbers go on, so that a record never points at another finding than the one it confirms.
    /// </summary>
    internal WordedNote Propose(IReadOnlyList<ProposedFinding> findings, long entry)
    {
        var before = Proposals ?? [];
        return this with
        {
            Proposals =
            [
                .. before.Select(one => one.State == ProposalState.Open
                    ? one with { State = ProposalState.Dropped, SettledAt = entry, IsReadAnew = true }
                    : one),
                .. findings.Select((finding, index) => new Proposal(
                    new(Sequence, before.Count + index), finding, ProposalState.Open, null)),
            ],
        };
    }

    internal WordedNote Settle(int index, ProposalState state, long settledAt, SettledLater? later) =>
        Proposals is null || index < 0 || index >= Proposals.Count
            ? this
            : this with
            {
                Proposals = Proposals.SetItem(index, Proposals[index] with { State = state, SettledAt = settledAt, Later = later }),
            };

    /// <summary>Lets a proposal that somebody dropped wait again.</summary>
    internal WordedNote Reopen(int index) => Proposals?.ElementAtOrDefault(index) is { CanBeReopened: true } dropped
        ? this with { Proposals = Proposals.SetItem(index, dropped with { State = ProposalState.Open, SettledAt = null, Later = null }) }
        : this;
}

/// <summary>A typed note.</summary>
public sealed record TypedNote(long Sequence, DateTimeOffset Time, NoteWritten Note) : WordedNote(Sequence, Time)
{
    /// <inheritdoc/>
    public override EntryBody Says => Note;

    /// <inheritdoc/>
    public override string? OpenCheck => Note.Check;

    /// <inheritdoc/>
    public override string? Words => Note.Text;
}

/// <summary>A voice note, with what became of it.</summary>
public sealed record VoiceNote : WordedNote
{
    private VoiceNote(long sequence, DateTimeOffset time, RecordingKept recording)
        : base(sequence, time) => Recording = recording;

    /// <summary>The recording.</summary>
    public RecordingKept Recording { get; }

    /// <inheritdoc/>
    public override EntryBody Says => Recording;

    /// <inheritdoc/>
    public override string? OpenCheck => Recording.OpenCheck;

    /// <inheritdoc/>
    public override string? Words => Corrected?.Text ?? Transcript?.Text;

    /// <summary>Its transcript: what was heard. Null while it waits or when it failed.</summary>
    public TranscriptMade? Transcript { get; internal init; }

    /// <summary>Sequence of the entry with its transcript; null while there is none.</summary>
    public long? TranscriptEntry { get; internal init; }

    /// <summary>What a person put in place of what was heard; null where nobody did.</summary>
    public WordsCorrected? Corrected { get; internal init; }

    /// <summary>Whether its words can be put right: it was read, has words, counts, and is no command.</summary>
    public bool CanBeCorrected => Words is { Length: > 0 } && Command is null && History.Withdrawn is null;

    /// <summary>Why it could not be transcribed; null otherwise.</summary>
    public string? Failure { get; internal init; }

    /// <summary>Whether somebody does not want it transcribed.</summary>
    public bool IsCancelled { get; internal init; }

    /// <summary>The command it is; null when it is none or was not read yet.</summary>
    public CommandHeard? Command { get; internal init; }

    /// <summary>What its command led to; null until it was obeyed.</summary>
    public CommandDone? Done { get; internal init; }

    /// <summary>Whether it is still to be transcribed.</summary>
    public bool IsWaiting => Transcript is null && Failure is null && !IsCancelled;

    /// <summary>Whether it has no transcript and none will be made unless somebody asks.</summary>
    public bool IsSetAside => Transcript is null && !IsWaiting;

    /// <summary>Whether it is words and nothing else: it was read, is no command, and no finding of it was confirmed or waits.
    /// Only then it can be withdrawn; else its recording is evidence of what rests on it.</summary>
    public bool IsWordsAlone => Words is { Length: > 0 } && Command is null
        && Proposals is { } proposals && proposals.TrueForAll(one => one.State == ProposalState.Dropped);

    /// <summary>Whether hands-free listening cut it out of what it heard.</summary>
    public bool IsHandsFree => Recording is UtteranceKept;

    internal static VoiceNote Kept(JournalEntry entry, RecordingKept recording) =>
        new(entry.Sequence, entry.CapturedTime, recording);
}
