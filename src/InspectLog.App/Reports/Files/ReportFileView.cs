using InspectLog.Inspecting;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports.Files;

/// <summary>A report as one file.</summary>
/// <param name="Report">The report.</param>
/// <param name="Head">What stands at the head and foot of every page.</param>
/// <param name="Withheld">How many entries of the journal are withheld from what the file is a part of.</param>
public sealed record ReportFileView(ReportView Report, ReportHeadWords Head, int Withheld)
{
    /// <summary>The style it is shown with.</summary>
    public string Style { get; init; } = "";

    /// <summary>The running head on paper.</summary>
    public string PrintStyle => ReportHead.Style(Head);

    /// <summary>Whether it is part of an archive, and does not stand alone.</summary>
    public bool IsOfArchive { get; init; }

    /// <summary>Its title.</summary>
    public string Title => $"{Head.Kind}: {Report.Vehicle.Name}";

    /// <summary>What it is that entries are withheld from.</summary>
    public string Withholder => IsOfArchive ? "archive" : "file";

    /// <summary>Where it comes from, in a sentence.</summary>
    public string Origin => IsOfArchive ? "From an archive made with InspectLog." : "Made with InspectLog.";

    /// <summary>The file of an inspection.</summary>
    /// <param name="scene">The inspection, without what is withheld.</param>
    /// <param name="workshop">The workshop.</param>
    /// <param name="withheld">How many entries are withheld.</param>
    public static ReportFileView Of(BenchScene scene, WorkshopState workshop, int withheld) => new(
        ReportBuilder.Build(scene, workshop, []) with { StandsAlone = true }, ReportHead.Words(scene), withheld);
}
