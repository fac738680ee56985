using CsCheck;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Tests.State;

public sealed class EntryRunsTests
{
    [Fact]
    public void Runs_hold_the_sequences_they_were_made_of_and_no_others() => Gen.Int[1, 4].Array[0, 60].Sample(steps =>
    {
        var sequences = new List<long>();
        foreach (var step in steps)
        {
            sequences.Add((sequences.Count == 0 ? 0 : sequences[^1]) + step);
        }

        var runs = sequences.Aggregate(EntryRuns.None, (now, sequence) => now.With(sequence));

        Assert.Equal(sequences.Count, runs.Count);
        Assert.Equal(sequences, Enumerable.Range(0, 300).Select(n => (long)n).Where(runs.Has));
        Assert.Equal(sequences.Where((sequence, at) => at == 0 || sequences[at - 1] != sequence - 1).Count(), runs.Runs.Length);
    });
}
