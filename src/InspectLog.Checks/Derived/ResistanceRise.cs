using InspectLog.Measuring;

namespace InspectLog.Checks.Derived;

/// <summary>How warm a copper winding is by what its resistance has risen (IEC 60034-1, 8.6.2; the clause from memory).
/// </summary>
/// <param name="Temperature">Temperature of the winding, °C.</param>
/// <param name="Rise">How far that is above the air about it, in degrees.</param>
/// <param name="Steps">The working.</param>
public sealed record ResistanceRise(double Temperature, double Rise, IReadOnlyList<Step> Steps)
{
    /// <summary>The rise from the resistance cold and hot.</summary>
    /// <param name="cold">Resistance cold, above 0.</param>
    /// <param name="coldTemperature">Temperature of the winding then, °C, −60 to 300.</param>
    /// <param name="hot">Resistance hot, in the same unit, above 0.</param>
    /// <param name="air">Temperature of the air about the hot winding, °C, −60 to 300.</param>
    /// <param name="unit">The unit of both resistances.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static ResistanceRise From(double cold, double coldTemperature, double hot, double air, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Sensible.UnlessAboveZero(cold, "The resistance cold");
        Sensible.UnlessAboveZero(hot, "The resistance hot");
        Copper.RefuseTemperature(air);
        var temperature = new Figure("Winding temperature", Copper.TemperatureOf(cold, coldTemperature, hot), "°C");
        var about = new Figure("Air about it", air, "°C");
        var rise = new Figure("Rise above the air", temperature.Value - air, "K");
        return new(
            temperature.Value,
            rise.Value,
            [
                new(
                    "resistance hot ÷ resistance cold × (235 + temperature cold) − 235",
                    [new("Resistance hot", hot, unit.Symbol), new("Resistance cold", cold, unit.Symbol), new("Temperature cold", coldTemperature, "°C")],
                    temperature),
                new("winding temperature − air about it", [temperature, about], rise),
            ]);
    }
}
