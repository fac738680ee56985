using InspectLog.App.Forms;
using InspectLog.App.Trends;
using InspectLog.App.Wear;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>A vehicle's own page.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Attention">What needs attention, each a short sentence.</param>
/// <param name="WearParts">Parts that wear, due ones first.</param>
/// <param name="Trends">How its readings went over the inspections.</param>
/// <param name="Inspections">A stretch of its inspections, newest first.</param>
/// <param name="Start">What an inspection can be started with.</param>
/// <param name="Technician">The name proposed for who inspects.</param>
/// <param name="Form">The start form when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record VehicleView(
    VehicleState Vehicle,
    IReadOnlyList<string> Attention,
    IReadOnlyList<WearLine> WearParts,
    TrendsView Trends,
    IReadOnlyList<InspectionSummary> Inspections,
    StartOffer Start,
    string Technician,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Whether the stretch begins with the newest inspection.</summary>
    public bool IsNewest { get; init; } = true;

    /// <summary>How many inspections are older than the stretch.</summary>
    public int Older { get; init; }

    /// <summary>Why nothing can be added to this vehicle's journal; null where it can.</summary>
    public GarageProblem? Closed => Problems.FirstOrDefault(problem => problem.ReadOnly && problem.VehicleId == Vehicle.Id);
}

/// <summary>An inspection in a list.</summary>
/// <param name="Inspection">The inspection.</param>
/// <param name="SheetTitle">Title of its sheet.</param>
/// <param name="Tally">"13 pass, 1 conditional, 1 fail", or how far it is.</param>
public sealed record InspectionSummary(InspectionState Inspection, string SheetTitle, string Tally);

/// <summary>The form for a new vehicle, or for describing one again.</summary>
/// <param name="Vehicle">The vehicle described; null for a new one.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record VehicleFormView(
    VehicleState? Vehicle, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);

/// <summary>The form for this vehicle's own limits of one check.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Sheet">Its sheet.</param>
/// <param name="Check">The check; it is a measured one.</param>
/// <param name="Measurand">What it measures.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record LimitsFormView(
    VehicleState Vehicle, CheckSheet Sheet, Check Check, Measurand Measurand, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);

