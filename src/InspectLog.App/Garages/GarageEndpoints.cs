using InspectLog.App.Network;
using InspectLog.App.Access;
using InspectLog.App.Backups;
using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Journal.Index;
using InspectLog.Journal;
using System.Globalization;

namespace InspectLog.App.Garages;

/// <summary>The first page, finding, and about.</summary>
public static class GarageEndpoints
{
    public static void MapGarage(this IEndpointRouteBuilder app)
    {
        var all = app.For(Policies.Visit);
        all.MapGet(Links.Garage, Show).WithName("garage");
        all.MapGet(Links.About, About).WithName("about");
        all.MapGet(Links.Notices, Notices).WithName("notices");
        app.For(Policies.LookAtAll).MapGet(Links.Find, Find).WithName("find");
    }

    /// <summary>Who may see one vehicle, or one report, begins there.</summary>
    private static IResult Show(
        HttpContext context, Garage garage, SheetLibrary sheets, ISpeechToText speech, TimeProvider time, BackupDesk backups, RemindsOfBackups reminds) => Caller.Of(context) switch
    {
        { Vehicle: { } vehicle, Inspection: { } number } => Results.Redirect(Links.Report(vehicle, number)),
        { Vehicle: { } vehicle } => Results.Redirect(Links.Vehicle(vehicle)),
        var caller => Page.Of<GaragePage, GarageView>(All(garage, sheets, speech, time) with
        {
            Backup = reminds.IsWanted && !garage.IsLookedAtOnly ? Reminder(garage, backups, time) : [],
            IsOwner = caller?.May(Policies.Run) == true,
        }),
    };

    private static GarageView All(Garage garage, SheetLibrary sheets, ISpeechToText speech, TimeProvider time)
    {
        var problems = garage.Problems;
        var closed = problems.Where(problem => problem is { ReadOnly: true, VehicleId: not null }).ToLookup(problem => problem.VehicleId);
        var today = Times.DayOf(time.GetLocalNow());
        return new(
            [.. garage.Vehicles().Select(summary => Card(garage, sheets, summary, closed[summary.Id].FirstOrDefault(), today))], speech.Readiness, problems);
    }

    private static IReadOnlyList<string> Reminder(Garage garage, BackupDesk backups, TimeProvider time) => BackupReminder.Of(
        backups.Record.Last, backups.Record.Settings, garage.Vehicles().Sum(vehicle => garage.Entries(vehicle.Id).Count), time.GetLocalNow());

    private static IResult Find(Garage garage, SheetLibrary sheets, TimeProvider time, string? words, string? show) =>
        Page.Of<FindPage, FindView>(FindViewBuilder.Build(garage, sheets, time, words ?? "", show));

    private static IResult About(HttpContext context, Garage garage, ISpeechToText speech) =>
        Page.Of<AboutPage, AboutView>(new AboutView(speech.Readiness, Doors.Of(context) == Door.Workshop ? garage.Folder : "On the workshop’s computer", ThirdPartyNotices.Works(), garage.Problems));

    private static IResult Notices(Garage garage) =>
        Page.Of<NoticesPage, NoticesView>(new NoticesView(ThirdPartyNotices.Works(), garage.Problems));

    private static VehicleCard Card(
        Garage garage, SheetLibrary sheets, VehicleSummary summary, GarageProblem? closed, DateOnly today)
    {
        var vehicle = garage.FindVehicle(summary.Id);
        var attention = vehicle is null ? [] : Attention.Of(vehicle, sheets, today);
        if (closed is not null)
        {
            var why = closed.IsFailedWrite
                ? "Writing its journal failed: it can be looked at, and nothing can be added until InspectLog is started again"
                : "Its journal is damaged: it can be looked at, and nothing can be added";
            return new VehicleCard(summary, why, null, attention);
        }

        if (vehicle?.OpenInspection is { } open)
        {
            var since = open.Started.ToString("d MMMM, HH:mm", CultureInfo.InvariantCulture);
            return new VehicleCard(summary, $"Inspection open since {since}", open.Number, attention);
        }

        if (vehicle?.Inspections.LastOrDefault() is { } last)
        {
            var when = last.Started.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
            var tally = VehicleViewBuilder.Summary(vehicle, sheets, last).Tally;
            return new VehicleCard(summary, $"Last looked at {when}: {tally}", null, attention);
        }

        return new VehicleCard(summary, "Not inspected yet", null, attention);
    }
}
