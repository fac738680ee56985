namespace InspectLog.Checks.Derived;

/// <summary>Ballast resistor and coil primary in series, and what they do with a steady current: the most that flows
/// with the ignition on and the switching transistor (or the points) closed.</summary>
public sealed record CoilCircuit
{
    /// <summary>Voltage of a 12 V system with the engine off, by convention, in V.</summary>
    public const double RestVoltage = 12;

    /// <summary>Voltage of a 12 V system that is being charged, in V; common practice, no source.</summary>
    public const double RunningVoltage = 14;

    /// <summary>A circuit of two known resistances.</summary>
    /// <param name="ballast">Resistance of the ballast resistor in Ω; 0 where there is none.</param>
    /// <param name="primary">Resistance of the coil's primary winding in Ω, above 0.</param>
    /// <exception cref="ArgumentException">A resistance is out of range.</exception>
    public CoilCircuit(double ballast, double primary)
    {
        Sensible.UnlessZeroOrMore(ballast, "The ballast resistance in Ω");
        Sensible.UnlessAboveZero(primary, "The coil's primary resistance in Ω");
        (Ballast, Primary) = (ballast, primary);
    }

    /// <summary>Resistance of the ballast resistor in Ω.</summary>
    public double Ballast { get; }

    /// <summary>Resistance of the coil's primary winding in Ω.</summary>
    public double Primary { get; }

    /// <summary>A circuit measured as a whole, of which one part is known.</summary>
    /// <param name="total">Both in series, in Ω, as the coil circuit check measures them.</param>
    /// <param name="ballast">The ballast resistor by itself, in Ω; below the total.</param>
    /// <exception cref="ArgumentException">A resistance is out of range, or the part not below the whole.</exception>
    public static CoilCircuit FromTotal(double total, double ballast)
    {
        Sensible.UnlessAboveZero(total, "The resistance of the whole circuit in Ω");
        return ballast < total
            ? new CoilCircuit(ballast, total - ballast)
            : throw new ArgumentException(
                "The ballast resistor must be smaller than the whole circuit. Measure both again, ignition off.");
    }

    /// <summary>The circuit with a steady current from a supply.</summary>
    /// <param name="supply">Voltage at the feed side of the ballast resistor in V, above 0.</param>
    /// <exception cref="ArgumentException">The voltage is not above 0.</exception>
    public CoilCircuitPoint At(double supply)
    {
        Sensible.UnlessAboveZero(supply, "The supply voltage in V");
        var from = new Figure("Supply", supply, "V");
        var ballast = new Figure("Ballast resistor", Ballast, "Ω");
        var primary = new Figure("Coil primary", Primary, "Ω");
        var current = new Figure("Current", supply / (Ballast + Primary), "A");
        var drop = new Figure("Voltage across the ballast resistor", current.Value * Ballast, "V");
        var ballastHeat = new Figure("Heat in the ballast resistor", drop.Value * current.Value, "W");
        var coil = new Figure("Voltage left for the coil", current.Value * Primary, "V");
        var coilHeat = new Figure("Heat in the coil", coil.Value * current.Value, "W");
        return new CoilCircuitPoint(
            supply, current.Value, drop.Value, ballastHeat.Value, coil.Value, coilHeat.Value,
            [
                new("supply ÷ (ballast resistor + coil primary)", [from, ballast, primary], current),
                new("current × ballast resistor", [current, ballast], drop),
                new("voltage across the ballast resistor × current", [drop, current], ballastHeat),
                new("current × coil primary", [current, primary], coil),
                new("voltage left for the coil × current", [coil, current], coilHeat),
            ]);
    }
}

/// <summary>What a coil circuit does at one supply voltage.</summary>
/// <param name="Supply">Supply voltage in V.</param>
/// <param name="Current">Steady current in A.</param>
/// <param name="BallastDrop">Voltage across the ballast resistor in V.</param>
/// <param name="BallastHeat">Power turned to heat in the ballast resistor in W.</param>
/// <param name="CoilVoltage">Voltage left for the coil in V.</param>
/// <param name="CoilHeat">Power turned to heat in the coil in W.</param>
/// <param name="Steps">The working.</param>
public sealed record CoilCircuitPoint(
    double Supply,
    double Current,
    double BallastDrop,
    double BallastHeat,
    double CoilVoltage,
    double CoilHeat,
    IReadOnlyList<Step> Steps);
