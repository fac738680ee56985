using System.Globalization;
using InspectLog.Measuring;
using DwellFigures = InspectLog.Checks.Derived.Dwell;
using AdvanceFigures = InspectLog.Checks.Derived.Advance;

namespace InspectLog.Inspecting.Workings;

/// <summary>Workings that turn angles into times.</summary>
public static class TimingWorkings
{
    private const string Angle = "angle";
    private const string Duty = "duty";
    private const string Time = "time";

    /// <summary>Dwell in degrees and in per cent.</summary>
    public static readonly WorkingKind Dwell = new(
        "dwell",
        "Dwell",
        "How long the coil is on between two sparks, as an angle, a share and a time.",
        scene =>
        [
            new("cylinders", "Cylinders", "", (scene.Vehicle.Engine?.Cylinders ?? scene.Sheet.Cylinders).ToString(CultureInfo.InvariantCulture), []),
            new("rpm", "Engine speed", "rpm", "", []),
            new("from", "Dwell is given as", "", Angle, [Angle, Duty, Time]),
            new("value", "Dwell", "° or % or ms", "", []),
        ],
        (inputs, _) =>
        {
            var (cylinders, rpm, value) = (inputs.Whole("cylinders"), inputs.Number("rpm"), inputs.Number("value"));
            var dwell = inputs.Choice("from") switch
            {
                Duty => DwellFigures.FromDuty(cylinders, rpm, value / 100),
                Time => DwellFigures.FromTime(cylinders, rpm, value / 1000),
                _ => DwellFigures.FromAngle(cylinders, rpm, value),
            };
            return [new("Dwell", dwell.Steps, [])];
        }) { Checks = ["ignition-timing", "coil-circuit-resistance", "dwell-angle", "dwell-ratio"] };

    /// <summary>Advance over engine speed.</summary>
    public static readonly WorkingKind Advance = new(
        "advance",
        "Advance in time",
        "How long before top dead centre the spark comes, in milliseconds.",
        scene =>
        [
            new("rpm", "Engine speed", "rpm", "", []),
            new("from", "Advance is given as", "", Angle, [Angle, Time]),
            new("value", "Advance", "° or ms", FromInspection.Value(scene, "ignition-timing", Units.Degree), []),
        ],
        (inputs, _) =>
        {
            var (rpm, value) = (inputs.Number("rpm"), inputs.Number("value"));
            var advance = inputs.Choice("from") == Time
                ? AdvanceFigures.FromTime(value / 1000, rpm)
                : AdvanceFigures.FromDegrees(value, rpm);
            return [new("Advance", advance.Steps, [])];
        }) { Checks = ["ignition-timing"] };
}
