using InspectLog.App.Forms;
using InspectLog.App.Trends;
using InspectLog.App.Ui;
using InspectLog.App.Wear;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>Gathers what the vehicle's page shows. Pure.</summary>
public static class VehicleViewBuilder
{
    public static VehicleView Build(
        VehicleState vehicle,
        SheetLibrary sheets,
        DateTimeOffset now,
        string? by,
        string technician,
        RefusedForm? form,
        IReadOnlyList<GarageProblem> problems,
        string? before = null)
    {
        var stretch = InspectionStretch.Of(vehicle.Inspections, before);
        return new(
            vehicle,
            Attention.Of(vehicle, sheets, Times.DayOf(now)),
            WearLine.Of(vehicle, sheets, Times.DayOf(now)),
            TrendsView.Of(vehicle, sheets, by, now),
            [.. stretch.Shown.Select(inspection => Summary(vehicle, sheets, inspection))],
            StartOffer.To(vehicle, sheets),
            technician,
            form,
            problems)
        {
            IsNewest = stretch.IsNewest,
            Older = stretch.Older,
        };
    }

    /// <summary>An inspection in a line.</summary>
    public static InspectionSummary Summary(VehicleState vehicle, SheetLibrary sheets, InspectionState inspection) =>
        BenchScene.Of(vehicle, sheets, inspection.Number) is { } scene
            ? new InspectionSummary(inspection, scene.Sheet.Title, Tally.Of(scene))
            : new InspectionSummary(inspection, inspection.How.Sheet, "its check sheet is missing; open it to see what to do");
}
