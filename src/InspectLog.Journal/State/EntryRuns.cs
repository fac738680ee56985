using System.Collections.Immutable;

namespace InspectLog.Journal.State;

/// <summary>Sequences of entries, as runs: an inspection has mostly one or a few. Immutable.</summary>
/// <param name="Runs">The runs, rising: first and last.</param>
internal sealed record EntryRuns(ImmutableArray<(long First, long Last)> Runs)
{
    /// <summary>None.</summary>
    public static readonly EntryRuns None = new([]);

    /// <summary>How many sequences there are.</summary>
    public long Count => Runs.Sum(run => run.Last - run.First + 1);

    /// <summary>Whether a sequence is among them.</summary>
    public bool Has(long sequence)
    {
        var (from, to) = (0, Runs.Length);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = Runs[middle].First <= sequence ? (middle + 1, to) : (from, middle);
        }

        return from > 0 && Runs[from - 1].Last >= sequence;
    }

    /// <summary>These and one that is higher than all.</summary>
    public EntryRuns With(long sequence) => Runs is [.., var (first, last)] && last == sequence - 1
        ? new(Runs.SetItem(Runs.Length - 1, (first, sequence)))
        : new(Runs.Add((sequence, sequence)));
}
