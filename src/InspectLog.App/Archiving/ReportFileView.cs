using InspectLog.App.Reports;

namespace InspectLog.App.Archiving;

/// <summary>A report as one file.</summary>
/// <param name="Report">The report.</param>
/// <param name="Style">The style it is shown with.</param>
/// <param name="PrintStyle">The running head on paper.</param>
/// <param name="Withheld">How many entries of the journal are withheld from the archive.</param>
public sealed record ReportFileView(ReportView Report, string Style, string PrintStyle, int Withheld);
