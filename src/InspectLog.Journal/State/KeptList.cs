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

    /// <summary>The one of a sequence; null when there is none.</summary>
    public T? Find(long sequence) => PlaceIn(All, sequence) is >= 0 and var at ? All[at] : null;

    /// <summary>The same with one changed; this very list where it has none of that sequence.</summary>
    public KeptList<T> Change(long sequence, Func<T, T> change)
    {
        var at = PlaceIn(All, sequence);
        if (at < 0)
        {
            return this;
        }

        var changed = change(All[at]);
        var counts = changed.History is { Withdrawn: null, IsLater: false };
        return new(All.SetItem(at, changed), PlaceIn(Counting, sequence) switch
        {
            >= 0 and var place => counts ? Counting.SetItem(place, changed) : Counting.RemoveAt(place),
            var place => counts ? Counting.Insert(~place, changed) : Counting,
        });
    }

    /// <summary>Where the one of a sequence stands; where there is none, the complement of where it would. They stand in the
    /// order of their sequences, as they came.</summary>
    private static int PlaceIn(ImmutableList<T> list, long sequence)
    {
        var (from, to) = (0, list.Count);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = list[middle].Sequence < sequence ? (middle + 1, to) : (from, middle);
        }

        return from < list.Count && list[from].Sequence == sequence ? from : ~from;
    }
}
