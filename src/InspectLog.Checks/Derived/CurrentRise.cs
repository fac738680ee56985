namespace InspectLog.Checks.Derived;

/// <summary>How the current rises in a coil after it is switched on, and the energy it then holds: the rise of a
/// series circuit of resistance and inductance, I(t) = U/R · (1 − exp(−t·R/L)), E = L·I²/2. The inductance is taken as
/// constant, so a core near saturation holds less than this.</summary>
public sealed record CurrentRise
{
    /// <summary>A coil that is switched on to a supply.</summary>
    /// <param name="inductance">Inductance of the primary in H, above 0.</param>
    /// <param name="resistance">Resistance of the whole circuit, ballast resistor included, in Ω, above 0.</param>
    /// <param name="supply">Supply voltage in V, above 0.</param>
    /// <exception cref="ArgumentException">One of them is not above 0.</exception>
    public CurrentRise(double inductance, double resistance, double supply)
    {
        Sensible.UnlessAboveZero(inductance, "The inductance in H");
        Sensible.UnlessAboveZero(resistance, "The resistance of the circuit in Ω");
        Sensible.UnlessAboveZero(supply, "The supply voltage in V");
        (Inductance, Resistance, Supply) = (inductance, resistance, supply);
    }

    /// <summary>Inductance in H.</summary>
    public double Inductance { get; }

    /// <summary>Resistance of the whole circuit in Ω.</summary>
    public double Resistance { get; }

    /// <summary>Supply voltage in V.</summary>
    public double Supply { get; }

    /// <summary>Time constant L/R in s: after it the current stands at 63 % of its end.</summary>
    public double TimeConstant => Inductance / Resistance;

    /// <summary>The current it ends at, in A.</summary>
    public double FinalCurrent => Supply / Resistance;

    /// <summary>The time constant of a coil that reaches a fraction of its end current in a known time, in s.</summary>
    /// <param name="fraction">The fraction, above 0 and below 1.</param>
    /// <param name="time">The time in s, above 0.</param>
    /// <exception cref="ArgumentException">One of them is out of range.</exception>
    public static double TimeConstantFrom(double fraction, double time)
    {
        Sensible.UnlessAboveZero(time, "The time in s");
        return fraction is > 0 and < 1
            ? -time / double.LogP1(-fraction)
            : throw new ArgumentException("The fraction of the end current must lie between 0 and 1.");
    }

    /// <summary>The fraction of its end the current has reached after a time.</summary>
    /// <param name="time">The time since switching on in s, 0 or more.</param>
    /// <param name="timeConstant">The time constant in s, above 0.</param>
    /// <exception cref="ArgumentException">One of them is out of range.</exception>
    public static double FractionAfter(double time, double timeConstant)
    {
        Sensible.UnlessZeroOrMore(time, "The time in s");
        Sensible.UnlessAboveZero(timeConstant, "The time constant in s");
        return -double.ExpM1(-time / timeConstant);
    }

    /// <summary>Current and stored energy after the coil has been on for a time, such as the dwell.</summary>
    /// <param name="time">The time since switching on in s, 0 or more.</param>
    /// <exception cref="ArgumentException">The time is below 0.</exception>
    public CurrentRisePoint After(double time)
    {
        var fraction = new Figure("Share of the end current", 100 * FractionAfter(time, TimeConstant), "%");
        var inductance = new Figure("Inductance", 1000 * Inductance, "mH");
        var resistance = new Figure("Circuit resistance", Resistance, "Ω");
        var constant = new Figure("Time constant", 1000 * TimeConstant, "ms");
        var final = new Figure("End current", FinalCurrent, "A");
        var current = FinalCurrent * FractionAfter(time, TimeConstant);
        var energy = Inductance * current * current / 2;
        var reached = new Figure("Current", current, "A");
        return new CurrentRisePoint(time, current, energy,
        [
            new("inductance ÷ circuit resistance", [inductance, resistance], constant),
            new("supply ÷ circuit resistance", [new("Supply", Supply, "V"), resistance], final),
            new(
                "1 − e to the power of −(time on ÷ time constant)",
                [new("Time on", 1000 * time, "ms"), constant],
                fraction),
            new("end current × share", [final, fraction], reached),
            new("½ × inductance × current²", [inductance, reached], new("Stored energy", 1000 * energy, "mJ")),
        ]);
    }

    /// <summary>The time in s until the current reaches a value; null where it never does.</summary>
    /// <param name="current">The current in A, 0 or more.</param>
    /// <exception cref="ArgumentException">The current is below 0.</exception>
    public double? TimeTo(double current)
    {
        Sensible.UnlessZeroOrMore(current, "The current in A");
        return current < FinalCurrent ? -TimeConstant * double.LogP1(-current / FinalCurrent) : null;
    }
}

/// <summary>A coil some time after it was switched on.</summary>
/// <param name="Time">The time in s.</param>
/// <param name="Current">Current in A.</param>
/// <param name="Energy">Energy stored in the coil in J.</param>
/// <param name="Steps">The working.</param>
public sealed record CurrentRisePoint(double Time, double Current, double Energy, IReadOnlyList<Step> Steps);
