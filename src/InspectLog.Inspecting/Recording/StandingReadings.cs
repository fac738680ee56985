using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>A reading that counts once some entries are in.</summary>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="Says">What it says then.</param>
/// <param name="At">Its place among the entries; null where it is none of them.</param>
/// <param name="Before">What it said before them; null where it is new.</param>
/// <param name="IsLater">Whether it was added after the inspection was closed, so that no other is decided with it.</param>
internal sealed record StandingReading(long Sequence, ReadingDecided Says, int? At, ReadingDecided? Before, bool IsLater)
{
    /// <summary>Whether it was withdrawn and comes back with the entries.</summary>
    public bool ComesBack { get; init; }

    /// <summary>Whether the entries bring it, or bring it back.</summary>
    public bool IsNew => At is not null || ComesBack;
}

/// <summary>Which readings of an inspection count once some entries are in. Pure.</summary>
internal static class StandingReadings
{
    /// <summary>The readings, in the order they were first recorded.</summary>
    /// <param name="scene">The inspection the entries are about to join.</param>
    /// <param name="bodies">The entries, in order.</param>
    public static IReadOnlyList<StandingReading> After(BenchScene scene, IReadOnlyList<EntryBody> bodies)
    {
        var standing = scene.Inspection.Readings.ToDictionary(
            one => one.Sequence, one => new StandingReading(one.Sequence, one.Body, null, one.Body, IsLater: false));
        for (var at = 0; at < bodies.Count; at++)
        {
            switch (bodies[at])
            {
                case ReadingDecided { Amends: { } first } says when Known(scene, first) is { } before:
                    standing[first] = before with { Says = says, At = at };
                    break;
                case ReadingDecided { Amends: null } says:
                    var sequence = scene.Vehicle.NextSequence + at;
                    standing[sequence] = new(sequence, says, at, null, scene.Inspection.IsClosed);
                    break;
                case EntryWithdrawn { Entry: var entry }:
                    standing.Remove(entry);
                    break;
                case EntryRestored { Entry: var entry } when Known(scene, entry) is { } again:
                    standing[entry] = again with { ComesBack = true };
                    break;
            }
        }

        return [.. standing.Values.OrderBy(one => one.Sequence)];
    }

    private static StandingReading? Known(BenchScene scene, long first) =>
        scene.Inspection.Find(first) is Recorded<ReadingDecided> kept
            ? new(first, kept.Body, null, kept.Body, kept.History.IsLater)
            : null;
}
