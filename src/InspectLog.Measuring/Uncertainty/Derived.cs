namespace InspectLog.Measuring;

/// <summary>One of the values a derived figure is worked out from.</summary>
/// <param name="Name">What it is, in words for the technician.</param>
/// <param name="Value">Its best estimate.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, 0 or more.</param>
/// <param name="DegreesOfFreedom">Its degrees of freedom, 1 or more, or infinity.</param>
public readonly record struct Input(
    string Name, double Value, double StandardUncertainty, double DegreesOfFreedom = double.PositiveInfinity)
{
    /// <summary>How likely the values within it are; null where that is not known.</summary>
    public ContributionShape? Shape { get; init; }
}

/// <summary>Figures worked out from measured values, with the uncertainty they inherit (JCGM 100:2008, 5.1 and 5.2).</summary>
public static class Derived
{
    /// <summary>A figure and its uncertainty.</summary>
    /// <param name="model">The figure as a function of the inputs' values, in their order; smooth near them.</param>
    /// <param name="inputs">The inputs; one or more.</param>
    /// <param name="correlation">Correlation coefficient, −1 to 1, of two inputs by their places in the list; null where
    /// all are independent. With correlated inputs the Welch–Satterthwaite formula does not hold, and the fewest degrees
    /// of freedom of any input are used.</param>
    /// <param name="evaluation">How the expanded uncertainty is found; null for the classical way. Inputs that are correlated
    /// have no sum of independent shapes, and are always taken classically.</param>
    /// <exception cref="ArgumentException">There is no input, one is out of range, or the model gives no finite number
    /// near them.</exception>
    public static Estimate Of(
        Func<double[], double> model, IReadOnlyList<Input> inputs, Func<int, int, double>? correlation = null, Evaluation? evaluation = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        RefuseBad(inputs);
        double[] point = [.. inputs.Select(input => input.Value)];
        double[] parts = [.. inputs.Select((input, i) => Sensitivity(model, point, i, input) * input.StandardUncertainty)];
        var value = model(point);
        if (!double.IsFinite(value) || !parts.All(double.IsFinite))
        {
            throw new ArgumentException("These values give no figure.");
        }

        Contribution[] contributions =
        [
            .. inputs
                .Select((input, i) => new Contribution(input.Name, Math.Abs(parts[i]), input.DegreesOfFreedom) { Shape = input.Shape })
                .OrderByDescending(contribution => contribution.StandardUncertainty),
        ];
        if (correlation is null)
        {
            return Estimate.From(value, contributions, evaluation ?? Evaluation.Classical);
        }

        var u = Combined(parts, correlation);
        var degreesOfFreedom = inputs.Min(input => input.DegreesOfFreedom);
        return Estimate.From(
            value, u, degreesOfFreedom, MeasurandDistribution.Student(u, degreesOfFreedom), contributions,
            (evaluation ?? Evaluation.Default) with { Method = EvaluationMethod.Classical });
    }

    /// <summary>An estimate as an input of a derived figure.</summary>
    public static Input Input(string name, in Estimate estimate) =>
        new(name, estimate.Value, estimate.StandardUncertainty, estimate.DegreesOfFreedom);

    private static double Combined(double[] parts, Func<int, int, double> correlation)
    {
        var variance = 0.0;
        for (var i = 0; i < parts.Length; i++)
        {
            variance += parts[i] * parts[i];
            for (var j = i + 1; j < parts.Length; j++)
            {
                variance += 2 * parts[i] * parts[j] * correlation(i, j);
            }
        }

        return Math.Sqrt(Math.Max(0, variance));
    }

    // Five points about the value: exact for polynomials of the fourth degree, and a step of a thousandth leaves about
    // twelve good digits.
    private static double Sensitivity(Func<double[], double> model, double[] point, int i, Input input)
    {
        if (input.StandardUncertainty == 0)
        {
            return 0;
        }

        var step = 1e-3 * Math.Max(Math.Abs(input.Value), input.StandardUncertainty);
        return ((8 * (At(1) - At(-1))) - (At(2) - At(-2))) / (12 * step);

        double At(int steps)
        {
            double[] moved = [.. point];
            moved[i] += steps * step;
            return model(moved);
        }
    }

    private static void RefuseBad(IReadOnlyList<Input> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        if (inputs.Count == 0)
        {
            throw new ArgumentException("A derived figure needs at least one value.");
        }

        if (inputs.Any(input => !double.IsFinite(input.Value)
            || !(input.StandardUncertainty >= 0 && double.IsFinite(input.StandardUncertainty))
            || !(input.DegreesOfFreedom >= 1)))
        {
            throw new ArgumentException(
                "A value must be a finite number, with an uncertainty of 0 or more and 1 degree of freedom or more.");
        }
    }
}
