namespace InspectLog.App.Reports.Files;

/// <summary>How far a report is written.</summary>
/// <param name="What">What is counted: "photo" or "page".</param>
/// <param name="At">Which one it is at.</param>
/// <param name="Of">How many there are.</param>
public readonly record struct ReportProgress(string What, int At, int Of);
