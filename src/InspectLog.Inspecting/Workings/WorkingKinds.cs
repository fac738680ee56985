using InspectLog.Checks;

namespace InspectLog.Inspecting.Workings;

/// <summary>The workings there are, in the order they are listed.</summary>
public static class WorkingKinds
{
    /// <summary>Every working, in the order shown.</summary>
    public static IReadOnlyList<WorkingKind> All { get; } =
    [
        CoilWorkings.Circuit,
        CoilWorkings.Rise,
        WindingWorking.Kind,
        TimingWorkings.Dwell,
        TimingWorkings.Advance,
        LeadWorkings.Leads,
        LeadWorkings.Routing,
        SpreadWorking.Kind,
        GapWorking.Kind,
    ];

    /// <summary>The workings that belong to a check.</summary>
    public static IEnumerable<WorkingKind> For(string checkId) => All.Where(kind => kind.Checks.Contains(checkId));

    /// <summary>The workings that belong to a check of a sheet; all of them where none does.</summary>
    public static IReadOnlyList<WorkingKind> On(CheckSheet sheet) =>
        All.Where(kind => kind.Checks.Any(check => sheet.Find(check) is not null)).ToList() is { Count: > 0 } fitting ? fitting : All;

    /// <summary>The working with this id, or null.</summary>
    public static WorkingKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
