using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Decides readings by what they make together with those of other checks, where the sheet says so: in whichever
/// order the two are recorded, and again when the other one is put right or withdrawn. Pure.</summary>
public static class Comparing
{
    /// <summary>The entries with their readings decided, followed by readings recorded before that they decide anew.</summary>
    /// <remarks>A reading keeps the other one it was decided with while that counts: a later one was read in another
    /// state. One that was decided by itself is decided with the first that comes.</remarks>
    /// <param name="scene">The inspection the entries are about to join.</param>
    /// <param name="bodies">The entries, in order; each is decided by itself.</param>
    public static IReadOnlyList<EntryBody> Settled(BenchScene scene, IReadOnlyList<EntryBody> bodies)
    {
        if (bodies.Count == 0 || scene.Sheet.Checks.All(check => check.Measurand?.DecidedBy is null))
        {
            return bodies;
        }

        var standing = StandingReadings.After(scene, bodies);
        var settled = bodies.ToList();
        foreach (var one in standing)
        {
            if (scene.Sheet.Find(one.Says.Check) is not { Measurand.DecidedBy: { IsOverruled: false } by } check)
            {
                continue;
            }

            var other = Partner(one, by, standing);
            if (one.At is { } at)
            {
                settled[at] = Decided(scene, check, one, other);
            }
            else if (IsDueAnew(one, other, standing))
            {
                settled.Add(Decided(scene, check, one, other) with { Amends = one.Sequence });
            }
        }

        return settled;
    }

    /// <summary>The reading that would decide another at a place, as things stand; null where none does.</summary>
    public static Reading? OtherFor(BenchScene scene, Check check, int? cylinder) =>
        check.Measurand?.DecidedBy is { IsOverruled: false } by
        && scene.Inspection.Readings.FindLast(one => IsOf(one.Body, by, cylinder))?.Body.Reading is { } other
        && Deciding.Fits(by.Form, other)
            ? other
            : null;

    private static StandingReading? Partner(StandingReading one, Comparison by, IReadOnlyList<StandingReading> standing)
    {
        var others = standing
            .Where(other => !other.IsLater && IsOf(other.Says, by, one.Says.Cylinder) && Deciding.Fits(by.Form, other.Says.Reading))
            .ToList();
        return others.Find(other => other.Sequence == one.Before?.With?.Record) ?? others.LastOrDefault();
    }

    private static bool IsOf(ReadingDecided reading, Comparison by, int? cylinder) =>
        reading.Check == by.CheckId && reading.Cylinder == (by.AtSamePlace ? cylinder : null);

    /// <summary>Whether a reading recorded before was decided with another that is not what it was, or by itself though
    /// there is one now. Of a place, only the reading that counts is decided with one that came later.</summary>
    private static bool IsDueAnew(StandingReading one, StandingReading? other, IReadOnlyList<StandingReading> standing) =>
        one.Says.With is { } with
            ? other?.Sequence != with.Record || !Amending.SameReading(other.Says.Reading, with.Reading)
            : other is not null && (one.IsNew || other.IsNew) && one == standing.LastOrDefault(last =>
                (last.Says.Check, last.Says.Cylinder) == (one.Says.Check, one.Says.Cylinder));

    private static ReadingDecided Decided(BenchScene scene, Check check, StandingReading one, StandingReading? other)
    {
        // Once an inspection is closed, its readings stay under the limits they were decided against.
        var kept = scene.Inspection.IsClosed && one.Before is { With: not null, Limits: { } was } && other is not null ? was : null;
        return other is { Says: var says } && Deciding.With(one.Says, says, other.Sequence, check, scene.Sheet, kept) is { } together
            ? together
            : Deciding.ByItself(one.Says, check, scene.Sheet);
    }
}
