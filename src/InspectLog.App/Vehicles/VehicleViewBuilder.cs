using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Trends;
using InspectLog.App.Ui;
using InspectLog.App.Wear;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>Gathers what the vehicle's page shows. Pure.</summary>
public static class VehicleViewBuilder
{
    public static VehicleView Build(
        VehicleState vehicle,
        DateTimeOffset now,
        string? by,
        string technician,
        RefusedForm? form,
        IReadOnlyList<GarageProblem> problems) => new(
        vehicle,
        Attention.Of(vehicle, Times.DayOf(now)),
        WearLine.Of(vehicle, Times.DayOf(now)),
        TrendsView.Of(vehicle, by, now),
        [.. vehicle.Inspections.Reverse().Select(inspection => Summary(vehicle, inspection))],
        BuiltInSheets.All,
        technician,
        form,
        problems);

    /// <summary>An inspection in a line.</summary>
    public static InspectionSummary Summary(VehicleState vehicle, InspectionState inspection) =>
        BenchScene.Of(vehicle, inspection.Number) is { } scene
            ? new InspectionSummary(inspection, scene.Sheet.Title, Tally.Of(scene))
            : new InspectionSummary(inspection, inspection.How.Sheet, "its sheet is not known to this version");
}
