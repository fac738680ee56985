namespace InspectLog.Measuring;

/// <summary>How the resistance of copper windings goes with temperature.</summary>
/// <remarks>In the range a car knows, R is proportional to t + K, with K the inferred zero. Sources differ: IEC 60034-1
/// rounds K to 235, annealed copper of 100 % conductivity has 234.5 (from α = 0.00393 at 20 °C). From 20 to 80 °C
/// they differ by 0.04 %.</remarks>
public static class Copper
{
    /// <summary>K of IEC 60034-1.</summary>
    public const double Iec60034 = 235;

    /// <summary>K of annealed copper of 100 % conductivity.</summary>
    public const double Annealed = 234.5;

    private const double Coldest = -60;
    private const double Hottest = 300;

    /// <summary>K for a temperature coefficient α given at 20 °C, per degree, above 0.</summary>
    public static double InferredZeroOf(double alphaAt20) => (1 / alphaAt20) - 20;

    /// <summary>The temperature coefficient α at a temperature, per degree: 1/(K + t).</summary>
    /// <param name="temperature">°C.</param>
    /// <param name="inferredZero">K.</param>
    public static double Alpha(double temperature, double inferredZero = Iec60034) => 1 / (inferredZero + temperature);

    /// <summary>Refers a winding's resistance to another temperature.</summary>
    /// <param name="resistance">As measured, 0 or more.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, same unit, 0 or more.</param>
    /// <param name="temperature">The two temperatures.</param>
    /// <returns>The resistance at <see cref="WindingTemperature.To"/> and its standard uncertainty, that of the winding's
    /// temperature included.</returns>
    /// <exception cref="ArgumentException">A temperature is outside −60 to 300 °C, or a number out of range.</exception>
    public static (double Value, double StandardUncertainty) Refer(
        double resistance, double standardUncertainty, WindingTemperature temperature)
    {
        RefuseBad(temperature);
        if (!(resistance >= 0 && double.IsFinite(resistance) && standardUncertainty >= 0))
        {
            throw new ArgumentException("A resistance and its uncertainty must be 0 or more.");
        }

        var referred = resistance * temperature.Factor;
        var fromTemperature =
            referred * temperature.ShareForEachDegree * Budget.Rectangular(temperature.HalfWidth);
        return (referred, double.Hypot(standardUncertainty * temperature.Factor, fromTemperature));
    }

    /// <summary>Moves limits given for one temperature to another, for a winding that is judged as it was measured.</summary>
    /// <param name="limits">Limits at <paramref name="givenAt"/>.</param>
    /// <param name="givenAt">°C.</param>
    /// <param name="measuredAt">°C.</param>
    /// <param name="inferredZero">K.</param>
    /// <exception cref="ArgumentException">A temperature is outside −60 to 300 °C.</exception>
    public static Limits Refer(Limits limits, double givenAt, double measuredAt, double inferredZero = Iec60034)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var change = new WindingTemperature(givenAt, measuredAt, 0, inferredZero);
        RefuseBad(change);
        return Limits.Of(limits.Lower * change.Factor, limits.Upper * change.Factor);
    }

    /// <summary>The temperature of a winding from its resistance cold and hot (IEC 60034-1, 8.6.2), °C.</summary>
    /// <param name="cold">Resistance at <paramref name="coldTemperature"/>, above 0.</param>
    /// <param name="coldTemperature">°C.</param>
    /// <param name="hot">Resistance hot, in the same unit, above 0.</param>
    /// <param name="inferredZero">K.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static double TemperatureOf(
        double cold, double coldTemperature, double hot, double inferredZero = Iec60034)
    {
        RefuseBad(new WindingTemperature(coldTemperature, coldTemperature, 0, inferredZero));
        if (!(cold > 0 && hot > 0 && double.IsFinite(hot / cold)))
        {
            throw new ArgumentException("A resistance must be above 0.");
        }

        return (hot / cold * (inferredZero + coldTemperature)) - inferredZero;
    }

    /// <summary>Refuses a temperature that no winding has.</summary>
    /// <param name="temperature">°C.</param>
    /// <exception cref="ArgumentException">It is outside −60 to 300 °C.</exception>
    public static void RefuseTemperature(double temperature) =>
        RefuseBad(new WindingTemperature(temperature, temperature, 0));

    internal static void RefuseBad(WindingTemperature temperature)
    {
        ArgumentNullException.ThrowIfNull(temperature);
        if (!(temperature.At is >= Coldest and <= Hottest && temperature.To is >= Coldest and <= Hottest))
        {
            throw new ArgumentException("The temperature of a winding must lie between −60 and 300 °C.");
        }

        if (!(temperature.HalfWidth is >= 0 and <= Hottest))
        {
            throw new ArgumentException("The uncertainty of the winding's temperature must be 0 or more.");
        }

        if (!(temperature.InferredZero is >= 200 and <= 300))
        {
            throw new ArgumentException("The inferred zero of copper lies near 235.");
        }
    }
}
