using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>Something recorded or captured, that a person may put right or take back. It goes by the sequence of its
/// first entry, whatever became of it since.</summary>
public interface IKept
{
    /// <summary>Sequence of its first entry.</summary>
    long Sequence { get; }

    /// <summary>When it was first recorded or captured, in the workshop's time.</summary>
    DateTimeOffset Time { get; }

    /// <summary>What it says now.</summary>
    EntryBody Says { get; }

    /// <summary>What became of it since it was first recorded.</summary>
    History History { get; }
}

/// <summary>What became of something recorded.</summary>
/// <param name="By">Who recorded it.</param>
public sealed record History(string By)
{
    /// <summary>What it said before it was put right, oldest first; empty where it never was.</summary>
    public IReadOnlyList<PastWording> Past { get; init; } = [];

    /// <summary>Why it no longer counts; null while it does.</summary>
    public Withdrawal? Withdrawn { get; init; }

    /// <summary>The withdrawals that were undone, oldest first; empty where none was.</summary>
    public IReadOnlyList<Restoration> Restored { get; init; } = [];

    /// <summary>When it came into the journal, where that was later than it was captured: it waited on a device that had no
    /// network. Null where it came at once.</summary>
    public DateTimeOffset? Came { get; init; }

    /// <summary>Whether it came after the inspection was closed.</summary>
    public bool IsLater { get; init; }

    /// <summary>Whether it is left out of the report.</summary>
    public bool IsLeftOutOfReport { get; init; }

    /// <summary>When it was last put right; null where it never was.</summary>
    public PastWording? LastChange => Past.Count > 0 ? Past[^1] : null;
}

/// <summary>What something said before it was put right.</summary>
/// <param name="Says">What it said.</param>
/// <param name="ChangedBy">Sequence of the entry that put it right.</param>
/// <param name="At">When that was, in the workshop's time.</param>
/// <param name="By">Who did it.</param>
/// <param name="IsLater">Whether the inspection was closed by then.</param>
public sealed record PastWording(EntryBody Says, long ChangedBy, DateTimeOffset At, string By, bool IsLater);

/// <summary>Something no longer counts.</summary>
/// <param name="Reason">Why.</param>
/// <param name="At">Since when, in the workshop's time.</param>
/// <param name="By">Who withdrew it.</param>
/// <param name="IsLater">Whether the inspection was closed by then.</param>
/// <param name="Entry">Sequence of the entry that withdrew it.</param>
public sealed record Withdrawal(string Reason, DateTimeOffset At, string By, bool IsLater, long Entry);

/// <summary>Something counts again.</summary>
/// <param name="Withdrawn">The withdrawal that was undone.</param>
/// <param name="Entry">Sequence of the entry that undid it.</param>
/// <param name="At">Since when, in the workshop's time.</param>
/// <param name="By">Who undid it.</param>
/// <param name="IsLater">Whether the inspection was closed by then.</param>
public sealed record Restoration(Withdrawal Withdrawn, long Entry, DateTimeOffset At, string By, bool IsLater);
