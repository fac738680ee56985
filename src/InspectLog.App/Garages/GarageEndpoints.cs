using System.Globalization;
using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Index;

namespace InspectLog.App.Garages;

/// <summary>The first page, finding, and about.</summary>
public static class GarageEndpoints
{
    public static void MapGarage(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.Garage, Show).WithName("garage");
        app.MapGet(Links.Find, Find).WithName("find");
        app.MapGet(Links.About, About).WithName("about");
    }

    private static IResult Show(Garage garage, ISpeechToText speech, TimeProvider time) => Page.Of<GaragePage, GarageView>(new GarageView(
        [.. garage.Vehicles().Select(summary => Card(garage, summary, Times.DayOf(time.GetLocalNow())))], speech.Readiness, garage.Problems));

    private static IResult Find(Garage garage, string? words)
    {
        var asked = (words ?? "").Trim();
        var hits = asked.Length == 0 ? [] : garage.Search(asked);
        return Page.Of<FindPage, FindView>(new FindView(asked, hits, garage.Problems));
    }

    private static IResult About(Garage garage, ISpeechToText speech) =>
        Page.Of<AboutPage, AboutView>(new AboutView(speech.Readiness, garage.Folder, garage.Problems));

    private static VehicleCard Card(Garage garage, VehicleSummary summary, DateOnly today)
    {
        var vehicle = garage.FindVehicle(summary.Id);
        var attention = vehicle is null ? [] : Attention.Of(vehicle, today);
        if (vehicle?.OpenInspection is { } open)
        {
            var since = open.Started.ToString("d MMMM, HH:mm", CultureInfo.InvariantCulture);
            return new VehicleCard(summary, $"Inspection open since {since}", open.Number, attention);
        }

        if (vehicle?.Inspections.LastOrDefault() is { } last)
        {
            var when = last.Started.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
            var tally = VehicleViewBuilder.Summary(vehicle, last).Tally;
            return new VehicleCard(summary, $"Last looked at {when}: {tally}", null, attention);
        }

        return new VehicleCard(summary, "Not inspected yet", null, attention);
    }
}
