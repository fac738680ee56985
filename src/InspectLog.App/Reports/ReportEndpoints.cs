using InspectLog.App.Access;
using InspectLog.App.Bench.Photos;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Reports.Files;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Reports;

/// <summary>The report of an inspection, and what is left out of it.</summary>
public static class ReportEndpoints
{
    public static void MapReports(this IEndpointRouteBuilder app)
    {
        var inspection = app.MapInspection(Policies.Look, Policies.Record);
        inspection.MapPost("/entries/{entry:long}/report", Choose).WithName("report-choice");
        inspection.MapPost("/urgency", Judge).WithName("urgency");
        inspection.MapGet("/close", CloseEndpoints.Form).WithName("close-form");
        inspection.MapPost("/close", CloseEndpoints.Close).WithName("close");

        var report = app.MapInspection(Policies.ReadReport, change: null, "/report");
        report.MapGet("/", Report).WithName("report");
        report.MapGet("/head.css", Head).WithName("report-head");
        report.MapGet("/pdf", Pdf).WithName("report-pdf");
        report.MapGet("/html", Html).WithName("report-html");
    }

    private static IResult Report(BenchDesk desk, ReportDesk reports) => Page.Of<ReportPage, ReportView>(reports.ViewOf(desk.Scene));

    private static async Task<IResult> Pdf(HttpContext context, BenchDesk desk, ReportDesk reports) => Results.File(
        await reports.PdfAsync(desk.Scene, context.RequestAborted), "application/pdf", ReportFileName.Of(desk.Scene.Vehicle.Id, desk.Scene.Inspection, "pdf"));

    private static async Task<IResult> Html(HttpContext context, BenchDesk desk, ReportDesk reports) => Results.File(
        await reports.HtmlAsync(desk.Scene, context.RequestAborted), "text/html; charset=utf-8", ReportFileName.Of(desk.Scene.Vehicle.Id, desk.Scene.Inspection, "html"));

    private static IResult Head(BenchDesk desk) => Results.Text(ReportHead.Style(ReportHead.Words(desk.Scene)), "text/css");

    /// <summary>Leaves a note or photo out of the report, or takes it in again: the field <c>shown</c> says which. It may
    /// be done after closing: what was found is the same. Answers with the page it was pressed on:
    /// the report, a photo's own, or the bench.</summary>
    private static async Task<IResult> Choose(HttpContext context, BenchDesk desk, string vehicle, long number, long entry)
    {
        if (desk.Scene.Inspection.Find(entry) is not Capture)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var text = form.Text("shown");
        if (text is not ("true" or "false"))
        {
            form.Refuse("shown", "Say whether it stands in the report: press one of the buttons beside it.");
            return desk.Show(context, desk.Scene, form.Refused("report"));
        }

        var shown = text == "true";
        var scene = desk.Record(
            desk.Scene,
            now => now.Inspection.Find(entry)!.History.IsLeftOutOfReport == shown ? [new ReportChoice(entry, shown)] : [],
            afterClosing: true);
        return form.Text("from") == "report"
            ? Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"{Links.Report(vehicle, number)}#{(shown ? Anchor(scene, entry) : "notes")}"))
            : form.Has("viewer")
            ? desk.ReturnTo(context, scene, Links.Photo(vehicle, number, entry) + PhotoBack.Read(form.Text("viewer")).Query)
            : desk.Show(context, scene);
    }

    /// <summary>Takes how soon what was found in a check is to be seen to. It may be said after closing: what was found is the same.</summary>
    private static async Task<IResult> Judge(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var check = desk.Scene.Sheet.Find(form.Text("check"));
        if (check is null || ReportUrgency.Parse(form.Text("urgency")) is null)
        {
            form.Refuse("urgency", "Say of which check, and how soon: press one of the buttons under “Say how soon” in the report.");
            return desk.Show(context, desk.Scene, form.Refused("report"));
        }

        var word = form.Text("urgency");
        desk.Record(
            desk.Scene,
            now => now.Inspection.Urgencies.TryGetValue(check.Id, out var said) && said.Urgency == word ? [] : [new UrgencyJudged(number, check.Id, word)],
            afterClosing: true);
        return Results.Redirect($"{Links.Report(vehicle, number)}#attention");
    }

    private static string Anchor(BenchScene scene, long entry) =>
        string.Create(CultureInfo.InvariantCulture, $"{(scene.Inspection.Find(entry) is PhotoCapture ? "photo" : "note")}-{entry}");
}
