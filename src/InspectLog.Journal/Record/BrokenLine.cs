namespace InspectLog.Journal.Record;

/// <summary>A line of a journal that is not sound, or does not follow from what stands before it.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Reason">What is wrong with it.</param>
/// <param name="IsUnfinished">Whether it is the remains of a last write that never finished, not damage.</param>
public sealed record BrokenLine(long Line, string Reason, bool IsUnfinished)
{
    /// <summary>Whether it holds an entry that is sound by itself and shown: then what is broken is the chain before it.
    /// </summary>
    public bool HoldsEntry { get; init; }
}
