using System.Collections.Immutable;

namespace InspectLog.Journal.State;

/// <summary>Things of one sort in the order they were first recorded. What was put right or withdrawn keeps its place; what was added after closing counts by itself.
/// Immutable.</summary>
internal sealed record KeptList<T>(ImmutableList<T> All, ImmutableList<T> Counting)
    where T : class, IKept
{
    /// <summary>None.</summary>
    public static readonly KeptList<T> Empty = new([], []);

    /// <summary>One more.</summary>
    public KeptList<T> Add(T item) => new(All.Add(item), item.History.IsLater ? Counting : Counting.Add(item));

    /// <summary>The same with one changed; this very list where it has none of that sequence.</summary>
    public KeptList<T> Change(long sequence, Func<T, T> change)
    {
        var at = All.FindIndex(item => item.Sequence == sequence);
        if (at < 0)
        {
            return this;
        }

        var all = All.SetItem(at, change(All[at]));
        return new(all, all.RemoveAll(item => item.History is { Withdrawn: not null } or { IsLater: true }));
    }
}
