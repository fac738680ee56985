namespace InspectLog.App.Workings;

/// <summary>The workings there are, in the order they are listed.</summary>
public static class WorkingKinds
{
    public static IReadOnlyList<WorkingKind> All { get; } =
    [
        CoilWorkings.Circuit,
        CoilWorkings.Rise,
        TimingWorkings.Dwell,
        TimingWorkings.Advance,
        LeadWorkings.Leads,
        LeadWorkings.Routing,
        SpreadWorking.Kind,
        GapWorking.Kind,
    ];

    /// <summary>The workings that belong to a check.</summary>
    public static IEnumerable<WorkingKind> For(string checkId) => All.Where(kind => kind.Checks.Contains(checkId));

    public static WorkingKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
