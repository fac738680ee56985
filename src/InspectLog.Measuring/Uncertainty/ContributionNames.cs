namespace InspectLog.Measuring;

/// <summary>The names of contributions, as budgets print them and advice finds them.</summary>
internal static class ContributionNames
{
    internal const string Accuracy = "instrument accuracy";
    internal const string DisplayStep = "display step";
    internal const string Repeats = "spread of the repeats";
    internal const string EarlierRepeats = "spread of earlier repeats";
    internal const string WindingTemperature = "winding temperature";
    internal const string LeadAccuracy = "accuracy of the test-lead reading";
    internal const string LeadCounts = "counts of the test-lead reading";
    internal const string LeadDisplayStep = "display step of the test-lead reading";
    internal const string LeadRepeats = "spread of the test-lead readings";
    internal const string Gap = "gap between the gauges";
    internal const string Gauges = "size of the gauges";
    internal const string AsStated = "uncertainty as stated";

    /// <summary>Whether a contribution comes from the scatter of repeats.</summary>
    internal static bool IsOfRepeats(string name) => name is Repeats or EarlierRepeats or LeadRepeats;

    /// <summary>Whether a contribution comes from the reading of the test leads, which is subtracted.</summary>
    internal static bool IsOfLeads(string name) => name is LeadAccuracy or LeadCounts or LeadDisplayStep or LeadRepeats;
}
