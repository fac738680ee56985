using System.Collections.Immutable;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>The lists of an inspection as one, in the order of their entries. A page asks for it many times, so what was merged
/// last is remembered as long as the lists are the same. Safe for use by many threads.</summary>
internal sealed class MergedLists
{
    private Merged? _last;

    public IReadOnlyList<IKept> Of(
        ImmutableList<Capture> captures,
        ImmutableList<Recorded<ReadingDecided>> readings,
        ImmutableList<Recorded<ObservationMade>> observations,
        ImmutableList<Recorded<ActionDone>> actions)
    {
        var last = _last;
        if (last is null || last.Captures != captures || last.Readings != readings || last.Observations != observations || last.Actions != actions)
        {
            _last = last = new(captures, readings, observations, actions)
            {
                All = [.. captures.Cast<IKept>().Concat(readings).Concat(observations).Concat(actions).OrderBy(kept => kept.Sequence)],
            };
        }

        return last.All;
    }

    /// <summary>One of these is like another: a state is compared by what it says.</summary>
    public override bool Equals(object? obj) => obj is MergedLists;

    public override int GetHashCode() => 0;

    private sealed record Merged(
        ImmutableList<Capture> Captures,
        ImmutableList<Recorded<ReadingDecided>> Readings,
        ImmutableList<Recorded<ObservationMade>> Observations,
        ImmutableList<Recorded<ActionDone>> Actions)
    {
        public required IReadOnlyList<IKept> All { get; init; }
    }
}
