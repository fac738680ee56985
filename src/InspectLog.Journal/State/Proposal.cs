using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

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

    /// <summary>Whether the note was read anew, in other words, and this is no longer meant: nobody dropped it.</summary>
    public bool IsReadAnew { get; init; }

    /// <summary>Whether somebody dropped it, so that it can wait to be settled again.</summary>
    public bool CanBeReopened => State == ProposalState.Dropped && !IsReadAnew;

    /// <summary>Who settled it after the inspection was closed, and when; null where it was settled before, or is open.
    /// </summary>
    public SettledLater? Later { get; init; }
}

/// <summary>A proposal was settled after its inspection was closed.</summary>
/// <param name="At">When, in the workshop's time.</param>
/// <param name="By">Who settled it.</param>
public sealed record SettledLater(DateTimeOffset At, string By);

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
