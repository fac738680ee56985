using InspectLog.App.Bench;

namespace InspectLog.App.Vehicles;

/// <summary>How the checks of an inspection came out, in a line.</summary>
public static class Tally
{
    /// <summary>"12 good, 2 doubtful, 1 failed"; for an open inspection what is still to do as well.</summary>
    public static string Of(BenchScene scene)
    {
        var progress = scene.Sheet.Checks
            .Select(check => Standings.Of(scene.Inspection, scene.Sheet, check))
            .ToList();
        var parts = new[]
        {
            Count(progress, PlaceOutcome.Good, "good"),
            Count(progress, PlaceOutcome.Recorded, "recorded"),
            Count(progress, PlaceOutcome.Doubtful, "doubtful"),
            Count(progress, PlaceOutcome.Bad, "failed"),
            Words(progress.Count(one => one.Standing == CheckStanding.LeftOut), "left out"),
            Words(progress.Count(one => one.Standing == CheckStanding.NotDone), "to do"),
        };
        return string.Join(", ", parts.Where(part => part.Length > 0));
    }

    private static string Count(List<CheckProgress> progress, PlaceOutcome outcome, string word) =>
        Words(progress.Count(one => one.Outcome == outcome && one.Standing != CheckStanding.LeftOut), word);

    private static string Words(int count, string word) => count == 0 ? "" : $"{count} {word}";
}
