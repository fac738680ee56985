using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Wear;

/// <summary>A part with when it is due.</summary>
/// <param name="Part">The part.</param>
/// <param name="Due">When it is due.</param>
/// <param name="Replaced">A replacement that was recorded at an inspection and is not among its fittings; null when there
/// is none.</param>
public sealed record WearLine(WearPart Part, WearDue Due, Replacement? Replaced)
{
    /// <summary>The watched parts of a vehicle, due ones first.</summary>
    public static IReadOnlyList<WearLine> Of(VehicleState vehicle, SheetLibrary sheets, DateOnly today)
    {
        var known = KnownOdometer.LastOf(vehicle);
        return [.. vehicle.WearParts.Select(part => new WearLine(part, WearDue.Of(part, today, known), Replacement.Of(vehicle, sheets, part))).OrderBy(line => !line.Due.IsDue)];
    }
}

/// <summary>The form for a part to watch.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Today">The day proposed for fitting.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record NewWearPartView(
    VehicleState Vehicle, DateOnly Today, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);

/// <summary>One part: when it was fitted, when it is due, and the form for a new one.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Line">The part.</param>
/// <param name="Today">The day proposed for fitting.</param>
/// <param name="Form">One of its forms as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record WearPartView(
    VehicleState Vehicle, WearLine Line, DateOnly Today, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The form of that name as typed when it was refused; null otherwise.</summary>
    public RefusedForm? Refused(string name) => Form?.Name == name ? Form : null;
}
