namespace InspectLog.Measuring;

/// <summary>Round wire of annealed copper by American wire gauge, for what a winding or a lead of it should
/// measure.</summary>
public static class CopperWire
{
    /// <summary>Resistivity of annealed copper at 20 °C, Ω·mm²/m: 1/58 (IEC 60028).</summary>
    public const double Resistivity = 1.0 / 58;

    private const int Thickest = -3;
    private const int Thinnest = 50;

    /// <summary>Diameter of the bare wire, mm: 0.127 mm at gauge 36, and 92 times as thick 39 gauges on (ASTM B258).</summary>
    /// <param name="gauge">Gauge number, 0 to 50; −1, −2 and −3 stand for 00, 000 and 0000.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge.</exception>
    public static double Diameter(int gauge)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(gauge, Thickest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(gauge, Thinnest);
        return 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
    }

    /// <summary>Resistance per length, Ω/m.</summary>
    /// <param name="gauge">As for <see cref="Diameter"/>.</param>
    /// <param name="temperature">Temperature of the wire, °C, −60 to 300.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge.</exception>
    /// <exception cref="ArgumentException">The temperature is out of range.</exception>
    public static double ResistancePerMetre(int gauge, double temperature = 20)
    {
        var diameter = Diameter(gauge);
        var at20 = Resistivity / (Math.PI / 4 * diameter * diameter);
        return Copper.Refer(at20, 0, new WindingTemperature(20, temperature, 0, Copper.Annealed)).Value;
    }
}
