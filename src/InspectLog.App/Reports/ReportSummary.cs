using InspectLog.App.Bench;

namespace InspectLog.App.Reports;

/// <summary>The report's first three sentences: how it came out, what to look at, what was done.</summary>
public static class ReportSummary
{
    public static IReadOnlyList<string> Of(BenchScene scene, IReadOnlyList<ReportCheck> checks) =>
        [Outcome(checks), ToLookAt(checks), Done(scene)];

    private static string Outcome(IReadOnlyList<ReportCheck> checks)
    {
        var good = checks.Count(one => one.Reason is null && one.Progress.Outcome == PlaceOutcome.Good);
        var undone = checks.Count(one => one.Reason is not null || one.Progress.Outcome == PlaceOutcome.None);
        var rest = undone == 0 ? "" : undone == 1 ? ", and one was not done" : $", and {undone} were not done";
        return $"{good} of {checks.Count} checks are in order{rest}.";
    }

    private static string ToLookAt(IReadOnlyList<ReportCheck> checks)
    {
        var failed = Titles(checks, PlaceOutcome.Bad);
        var doubtful = Titles(checks, PlaceOutcome.Doubtful);
        return (failed.Count, doubtful.Count) switch
        {
            (0, 0) => "Nothing failed and nothing is in doubt.",
            (0, _) => $"In doubt: {Joined(doubtful)}.",
            (_, 0) => $"Failed: {Joined(failed)}.",
            _ => $"Failed: {Joined(failed)}; in doubt: {Joined(doubtful)}.",
        };
    }

    private static string Done(BenchScene scene)
    {
        var done = ReportBuilder.Done(scene.Inspection, scene.Sheet);
        return done.Count == 0 ? "Nothing was replaced, cleaned or adjusted." : $"Done: {Joined(done)}.";
    }

    private static List<string> Titles(IReadOnlyList<ReportCheck> checks, PlaceOutcome outcome) =>
        [.. checks.Where(one => one.Reason is null && one.Progress.Outcome == outcome).Select(one => Lower(one.Check.Title))];

    private static string Joined(IReadOnlyList<string> items)
    {
        var lower = items.Select(Lower).ToList();
        return lower.Count == 1 ? lower[0] : $"{string.Join(", ", lower[..^1])} and {lower[^1]}";
    }

    private static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}
