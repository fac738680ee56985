using System.Globalization;
using InspectLog.App.Ui;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports.Files;

/// <summary>What the file of a report is called. Pure.</summary>
public static class ReportFileName
{
    /// <summary>"marigold-2026-03-12-inspection-1.pdf".</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="inspection">The inspection.</param>
    /// <param name="ending">What its name ends with, without the point.</param>
    public static string Of(string vehicleId, InspectionState inspection, string ending) => string.Create(
        CultureInfo.InvariantCulture, $"{vehicleId}-{Times.Machine(Times.DayOf(inspection.Started))}-inspection-{inspection.Number}.{ending}");
}
