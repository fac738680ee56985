namespace InspectLog.Measuring;

/// <summary>How warm a copper winding is by what its resistance has risen, and by how much that is above what cools it
/// (IEC 60034-1, 8.6.2; the clause from memory).</summary>
/// <param name="Temperature">Temperature of the winding, °C.</param>
/// <param name="Rise">How far that is above the coolant, in degrees.</param>
public readonly record struct WindingRise(Estimate Temperature, Estimate Rise)
{
    private const string Thermometer = "thermometer";

    /// <summary>The winding's temperature t₂ = (R₂/R₁)·(K + t₁) − K and its rise t₂ − tₐ, each with the uncertainty of the
    /// resistances and of the temperatures (JCGM 100:2008, clause 5). What one meter adds in percent to both resistances
    /// drops out of their ratio, which <see cref="Compared"/> heeds.</summary>
    /// <param name="ratio">Resistance hot for that cold, above 0.</param>
    /// <param name="temperatures">The temperatures.</param>
    /// <param name="evaluation">How the expanded uncertainties are found; null for the usual way.</param>
    /// <exception cref="ArgumentException">A number is out of range; the message says which.</exception>
    public static WindingRise Of(in Estimate ratio, RiseTemperatures temperatures, Evaluation? evaluation = null)
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        var (cold, coolant, within, zero) = (temperatures.Cold, temperatures.Coolant, temperatures.HalfWidth, temperatures.InferredZero);
        Copper.RefuseBad(new WindingTemperature(cold, coolant, within, zero));
        if (!(ratio.Value > 0))
        {
            throw new ArgumentException("A resistance must be above 0.");
        }

        var best = ratio.Value;
        Input[] off =
        [
            .. temperatures.OneThermometer
                ? [Even(Thermometer, within)]
                : new[] { Even($"{Thermometer} at the cold winding", within), Even($"{Thermometer} at the coolant", within) },
            .. ratio.Contributions.Select(part => new Input(part.Name, 0, part.StandardUncertainty, part.DegreesOfFreedom) { Shape = part.Shape }),
        ];
        var thermometers = temperatures.OneThermometer ? 1 : 2;
        return new(Worked(from => Winding(from)), Worked(from => Winding(from) - coolant - from[thermometers - 1]));

        double Winding(double[] from) => ((best + from.Skip(thermometers).Sum()) * (zero + cold + from[0])) - zero;

        Estimate Worked(Func<double[], double> model)
        {
            var worked = Derived.Of(model, off, evaluation: evaluation ?? Evaluation.Default);
            return worked with { Contributions = [.. worked.Contributions.Where(part => part.StandardUncertainty > 0)] };
        }
    }

    private static Input Even(string name, double halfWidth) =>
        new(name, 0, Budget.Rectangular(halfWidth)) { Shape = ContributionShape.Even };
}

/// <summary>The temperatures that a winding's rise is worked out from.</summary>
/// <param name="Cold">Temperature of the winding when its resistance was read cold, °C, −60 to 300.</param>
/// <param name="Coolant">Temperature of the air or what else cools it when it was read hot, °C, −60 to 300.</param>
/// <param name="HalfWidth">How far each may be off, ±, in degrees, 0 or more; taken as rectangular.</param>
/// <param name="OneThermometer">Whether one thermometer took both, which is then off by the same.</param>
/// <param name="InferredZero">K; see <see cref="Copper"/>.</param>
public sealed record RiseTemperatures(
    double Cold, double Coolant, double HalfWidth = 0, bool OneThermometer = false, double InferredZero = Copper.Iec60034);
