using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Reports;

/// <summary>How soon each thing is to be seen to: by a person's word, else by the sheet, else by what is with it. Pure.</summary>
public static class ReportUrgency
{
    /// <summary>What is to be seen to, with how soon.</summary>
    public static IReadOnlyList<AttentionLine> Judge(IEnumerable<AttentionLine> lines, BenchScene scene) => [.. lines.Select(line => Judge(line, scene))];

    /// <summary>What a form or an entry calls it; null for no such word.</summary>
    public static Urgency? Parse(string word) => word switch
    {
        "now" => Urgency.Now,
        "soon" => Urgency.Soon,
        "later" => Urgency.Later,
        _ => null,
    };

    /// <summary>How a form and an entry call it.</summary>
    public static string WordOf(Urgency urgency) => urgency switch
    {
        Urgency.Now => "now",
        Urgency.Soon => "soon",
        _ => "later",
    };

    private static AttentionLine Judge(AttentionLine line, BenchScene scene)
    {
        var check = line.Check is { } id ? scene.Sheet.Find(id) : null;
        return check is not null && scene.Inspection.Urgencies.TryGetValue(check.Id, out var said) && Parse(said.Urgency) is { } word
            ? line with { Urgency = word, UrgencyBy = said.By }
            : line with { Urgency = BySheet(line, check?.Urgency) };
    }

    // What is only doubtful is a step less urgent than what failed; what is merely not known can wait.
    private static Urgency BySheet(AttentionLine line, Urgency? ofFailure) => line.Outcome switch
    {
        PlaceOutcome.Bad => ofFailure ?? Urgency.Now,
        PlaceOutcome.Doubtful when line.IsUndone => Urgency.Now,
        PlaceOutcome.Doubtful => ofFailure is null or Urgency.Now ? Urgency.Soon : Urgency.Later,
        _ => Urgency.Later,
    };
}
