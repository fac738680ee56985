using InspectLog.Checks.Derived;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>A gap in millimetres, inches and thou.</summary>
public static class GapWorking
{
    /// <summary>The gap in millimetres, inches and thou.</summary>
    public static readonly WorkingKind Kind = new(
        "gap",
        "Gap in other units",
        "A gap in millimetres, inches and thousandths of an inch.",
        scene =>
        [
            new("value", "Gap", "", FromInspection.Value(scene, "pickup-air-gap", Units.Millimetre), []),
            new("unit", "Unit", "", "mm", ["mm", "in", "thou"]),
        ],
        (inputs, _) =>
        [
            new("Gap", Gap.From(inputs.Number("value"), Units.Find(inputs.Choice("unit"))!).Steps, []),
        ]) { Checks = ["pickup-air-gap", "plug-gap", "contact-points", "inlet-valve-clearance", "exhaust-valve-clearance"] };
}
