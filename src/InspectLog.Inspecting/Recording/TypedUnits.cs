using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>The units a value may be typed in.</summary>
public static class TypedUnits
{
    /// <summary>Units of the measurand's kind, the one it is shown in first.</summary>
    public static IReadOnlyList<Unit> For(Measurand measurand) =>
        [measurand.DisplayUnit, .. Units.All.Where(u => u.Kind == measurand.Kind && u != measurand.DisplayUnit)];
}
