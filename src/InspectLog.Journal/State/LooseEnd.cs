using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>Something disconnected, removed, switched on or undone.</summary>
/// <param name="Sequence">Sequence of the entry that opened it.</param>
/// <param name="Opened">When, in the workshop's time.</param>
/// <param name="What">What it is.</param>
/// <param name="Tied">When it was put right; null otherwise.</param>
/// <param name="WaivedBecause">Why it stays; null otherwise.</param>
public sealed record LooseEnd(
    long Sequence, DateTimeOffset Opened, LooseEndOpened What, DateTimeOffset? Tied, string? WaivedBecause) : IKept
{
    /// <summary>Whether it still has to be put right.</summary>
    public bool IsOpen => Tied is null && WaivedBecause is null;

    /// <summary>When it was said why it stays; null while nobody did.</summary>
    public DateTimeOffset? Waived { get; init; }

    /// <summary>Sequence of the entry that tied it; null while nothing did.</summary>
    public long? TiedBy { get; init; }

    /// <summary>The record that said it was put right; null where somebody ticked it off.</summary>
    public long? TiedByRecord { get; init; }

    /// <summary>Whether somebody ticked it off, and no record said so.</summary>
    public bool IsTickedOff => TiedBy is not null && TiedByRecord is null;

    /// <summary>What had tied it and was withdrawn, oldest first: the sequence of the tie, and the withdrawal.</summary>
    public IReadOnlyList<(long Tie, Withdrawal Withdrawn)> WithdrawnTies { get; init; } = [];

    /// <inheritdoc/>
    public History History { get; init; } = new("");

    DateTimeOffset IKept.Time => Opened;

    EntryBody IKept.Says => What;
}
