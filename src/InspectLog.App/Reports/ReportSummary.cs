using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Reports;

/// <summary>The report's first three sentences: how it came out, how much there is to see to, what was done. What is to be
/// seen to is named right below, once.</summary>
public static class ReportSummary
{
    public static IReadOnlyList<string> Of(
        BenchScene scene, IReadOnlyList<ReportCheck> checks, IReadOnlyList<AttentionLine> attention) =>
        [Outcome(checks), ToLookAt(checks, attention), Done(scene)];

    private static string Outcome(IReadOnlyList<ReportCheck> checks)
    {
        var good = checks.Count(one => one.Section == ReportSectionKind.Passed);
        var half = checks.Count(one => one.Section == ReportSectionKind.NotFinished);
        var undone = checks.Count(one => one.Section == ReportSectionKind.NotDone);
        List<string> rest =
        [
            .. half > 0 ? [Phrases.Count(half, "is not finished", "are not finished")] : Array.Empty<string>(),
            .. undone > 0 ? [Phrases.Count(undone, "was not done", "were not done")] : Array.Empty<string>(),
        ];
        return $"{good} of {checks.Count} checks {(good == 1 ? "is" : "are")} in order{(rest.Count > 0 ? ", " : "")}{Phrases.Joined(rest)}.";
    }

    private static string ToLookAt(IReadOnlyList<ReportCheck> checks, IReadOnlyList<AttentionLine> attention)
    {
        var unconfirmed = attention.Count(one => one.Word.EndsWith("but not confirmed", StringComparison.Ordinal));
        var (open, left) = (Count(attention, "Still undone"), Count(attention, "Left as it is"));
        var (read, confirmed) = (Count(attention, "Read later"), Count(attention, "Confirmed later"));
        List<string> parts =
        [
            .. Counted(In(checks, ReportSectionKind.Failed), "check failed", "checks failed"),
            .. Counted(In(checks, ReportSectionKind.Conditional), "check is too close to a limit to be sure", "checks are too close to a limit to be sure"),
            .. Counted(In(checks, ReportSectionKind.NeedsLook), "check needs a look", "checks need a look"),
            .. Counted(unconfirmed, "finding is not confirmed", "findings are not confirmed"),
            .. Counted(open, "loose end is still open", "loose ends are still open"),
            .. Counted(left, "loose end was left as it is", "loose ends were left as they are"),
            .. Counted(read, "later reading needs a look", "later readings need a look"),
            .. Counted(confirmed, "finding that was confirmed later needs a look", "findings that were confirmed later need a look"),
        ];
        return parts.Count > 0 ? $"{string.Join("; ", parts)}."
            : attention.Count > 0 ? "Nothing is known to have failed or to need a look, but not everything is settled."
            : "Nothing failed and nothing needs a look.";
    }

    private static string Done(BenchScene scene)
    {
        var done = ReportBuilder.Done(scene.Inspection, scene.Sheet);
        return done.Count == 0 ? "Nothing was replaced, cleaned or adjusted." : $"Done: {Phrases.Joined([.. done.Select(Phrases.Lower)])}.";
    }

    private static int In(IReadOnlyList<ReportCheck> checks, ReportSectionKind section) => checks.Count(one => one.Section == section);

    private static string[] Counted(int count, string one, string several) => count == 0 ? [] : [Phrases.Count(count, one, several)];

    private static int Count(IReadOnlyList<AttentionLine> attention, string word) => attention.Count(one => one.Word == word);
}
