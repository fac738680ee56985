using InspectLog.Checks.Derived;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>Workings of the coil and its circuit.</summary>
public static class CoilWorkings
{
    private const string TotalCheck = "coil-circuit-resistance";
    private const string BallastCheck = "ballast-resistance";
    private const string PrimaryCheck = "coil-primary-resistance";

    /// <summary>The resistance and the current of the coil circuit.</summary>
    public static readonly WorkingKind Circuit = new(
        "coil-circuit",
        "Coil circuit",
        "What the ballast resistor and the coil share out of the supply, at rest and running.",
        scene =>
        [
            new("total", "Ballast and coil together", "Ω", Total(scene), [],
                "Filled in from the coil circuit check, or from ballast and primary, where they have readings.")
            {
                Read = FromInspection.Read(scene, TotalCheck, Units.Ohm),
            },
            new("ballast", "Ballast resistor alone", "Ω", FromInspection.Value(scene, BallastCheck, Units.Ohm), [],
                "Measure it by itself, ignition off.")
            {
                // Where the total is the sum of two readings, an uncertainty of one of them alone would mislead.
                Read = FromInspection.Last(scene, TotalCheck) is null ? null : FromInspection.Read(scene, BallastCheck, Units.Ohm),
            },
            new("rest", "Supply, engine off", "V", FromInspection.Text(CoilCircuit.RestVoltage), []),
            new("running", "Supply, engine running", "V", FromInspection.Text(CoilCircuit.RunningVoltage), []),
        ],
        (inputs, _) =>
        {
            var circuit = CoilCircuit.FromTotal(inputs.Number("total"), inputs.Number("ballast"));
            return
            [
                new("Engine off, ignition on", circuit.At(inputs.Number("rest")).Steps, []),
                new("Running", circuit.At(inputs.Number("running")).Steps,
                    ["A ballast resistor runs hot enough to burn; let it cool before you touch it."]),
            ];
        }) { Checks = [TotalCheck, "supply-voltage", BallastCheck, PrimaryCheck] };

    /// <summary>How fast the current rises in the coil.</summary>
    public static readonly WorkingKind Rise = new(
        "current-rise",
        "Current and energy in the coil",
        "How far the coil's current has risen when it is switched off, and the energy it then holds.",
        scene =>
        [
            new("inductance", "Inductance of the primary", "mH", "", [], "From the coil's data sheet or an LCR meter."),
            new("resistance", "Ballast and coil together", "Ω", Total(scene), [])
            {
                Read = FromInspection.Read(scene, TotalCheck, Units.Ohm),
            },
            new("supply", "Supply", "V", FromInspection.Text(CoilCircuit.RunningVoltage), []),
            new("time", "Time the coil is on", "ms", "", [], "The dwell working gives it from the dwell angle."),
        ],
        (inputs, _) =>
        {
            var rise = new CurrentRise(inputs.Number("inductance") / 1000, inputs.Number("resistance"), inputs.Number("supply"));
            return [new("From switching on to switching off", rise.After(inputs.Number("time") / 1000).Steps, [])];
        }) { Checks = [TotalCheck, PrimaryCheck] };

    // Some sheets measure the two together, others each by itself.
    private static string Total(BenchScene scene) =>
        FromInspection.Last(scene, TotalCheck) is { } together ? FromInspection.Text(together)
        : FromInspection.Last(scene, BallastCheck) + FromInspection.Last(scene, PrimaryCheck) is { } sum ? FromInspection.Text(sum)
        : "";
}
