
namespace InspectLog.Inspecting.Standing;

/// <summary>How the checks of an inspection came out, in a line.</summary>
public static class Tally
{
    /// <summary>"12 good, 1 conditional, 2 need a look, 1 failed"; for an open inspection what is still to do as well.</summary>
    public static string Of(BenchScene scene)
    {
        var progress = Standings.OfAll(scene.Inspection, scene.Sheet).Values.ToList();
        var parts = new[]
        {
            Count(progress, PlaceOutcome.Good, "good"),
            Count(progress, PlaceOutcome.Recorded, "recorded"),
            Words(Of(progress, PlaceOutcome.Doubtful).Count(one => one.IsConditional), "conditional"),
            Words(Of(progress, PlaceOutcome.Doubtful).Count(one => !one.IsConditional), "needs a look", "need a look"),
            Count(progress, PlaceOutcome.Bad, "failed"),
            Words(progress.Count(IsOnlyLeftOut), "left out"),
            Words(progress.Count(one => one.Standing == CheckStanding.NotDone), "to do"),
        };
        return string.Join(", ", parts.Where(part => part.Length > 0));
    }

    private static string Count(List<CheckProgress> progress, PlaceOutcome outcome, string word) =>
        Words(Of(progress, outcome).Count(), word);

    private static IEnumerable<CheckProgress> Of(List<CheckProgress> progress, PlaceOutcome outcome) =>
        progress.Where(one => one.Outcome == outcome && !IsOnlyLeftOut(one));

    /// <summary>What is bad at one place does not become less so by leaving out the others.</summary>
    private static bool IsOnlyLeftOut(CheckProgress one) => one.Standing == CheckStanding.LeftOut && one.Outcome < PlaceOutcome.Doubtful;

    private static string Words(int count, string word, string? several = null) =>
        count == 0 ? "" : $"{count} {(count == 1 ? word : several ?? word)}";
}
