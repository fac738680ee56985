namespace InspectLog.Measuring.Tests;

/// <summary>A reading as a workshop may take it, drawn by chance.</summary>
internal sealed record SomeBudget(
    Reading Reading, Blade[] Goes, Blade[] Stops, Limits Limits, Instrument? Instrument, Evaluation Evaluation);

/// <summary>Draws readings of every kind, with their limits and instrument.</summary>
internal sealed class SomeBudgets(int seed)
{
    private static readonly double[] Steps = [0.001, 0.01, 0.1, 1];
    private static readonly double[] Percents = [0, 0.05, 0.2, 0.5, 0.8, 2, 3];
    private static readonly double[] Digits = [0, 0.5, 1, 2, 3, 5, 10];
    private static readonly double[] Scatters = [0, 0.3, 1, 3, 10, 30];
    private static readonly AllowanceSource[] Sources =
    [
        AllowanceSource.Method, AllowanceSource.Operator, AllowanceSource.TestLeads, AllowanceSource.Temperature,
        AllowanceSource.Reference,
    ];

    private readonly Random _random = new(seed);

    internal SomeBudget Next() => Chance(0.12) ? Gap() : Displayed();

    private SomeBudget Gap()
    {
        double[] tolerances = [0, 0.001, 0.002, 0.005];
        var (goes, stops) = (0.05 * _random.Next(1, 12), 0.0);
        stops = goes + Of([0.01, 0.02, 0.03, 0.05, 0.1]);
        Blade[] shared = Chance(0.3) ? [new(0.04, Of(tolerances))] : [];
        Blade[] small = [.. shared, new(goes, Of(tolerances))];
        Blade[] large = [.. shared, new(stops, Of(tolerances))];
        if (small[^1].Tolerance + large[^1].Tolerance > 0.99 * (stops - goes))
        {
            return Gap();
        }

        var bracket = FeelerBlades.Bracket(small, large);
        var evaluation = SomeEvaluation();
        return new(bracket, small, large, LimitsAbout(Estimate.Of(bracket, evaluation)), null, evaluation);
    }

    private SomeBudget Displayed()
    {
        var step = Of(Steps);
        var accuracy = new Accuracy(Of(Percents), Of(Digits));
        var counts = Chance(0.5) ? _random.Next(20, 200) : _random.Next(200, 5000);
        var reading = new DisplayedReading(Values(_random.Next(1, 9), counts, Of(Scatters), step), accuracy, step)
        {
            Leads = Chance(0.25) ? Leads(accuracy, step) : null,
            Scatter = Chance(0.2) ? new(step * Of(Scatters), Chance(0.3) ? null : _random.Next(1, 20)) : null,
            Allowances = Chance(0.4) ? [.. Enumerable.Range(0, _random.Next(1, 4)).Select(_ => Allow(step))] : null,
            Winding = Chance(0.25) ? new(Of([-10, 5, 20, 35, 80]), 20, Of([0, 0.5, 1, 2, 5, 10])) : null,
        };
        var evaluation = SomeEvaluation();
        var largest = reading.Values.Max();
        return new(
            reading, [], [], LimitsAbout(Estimate.Of(reading, evaluation)), Chance(0.6) ? Meter(accuracy, step, largest) : null,
            evaluation);
    }

    private TestLeads Leads(Accuracy accuracy, double step)
    {
        var same = Chance(0.6);
        var own = same ? step : step * Of([0.1, 1]);
        return new(
            Values(_random.Next(1, 4), _random.Next(0, 40), Of([0, 0.5, 2]), own),
            same ? accuracy : new(Of(Percents), Of(Digits)), own, same);
    }

    private Allowance Allow(double step) =>
        new(Of(Sources), step * Of(Scatters) * _random.NextDouble(), (AllowanceShape)_random.Next(3));

    // Ranges a decade apart, of which some are coarser than the one in use and some too small for the value.
    private Instrument Meter(Accuracy accuracy, double step, double largest) =>
        new("meter", "Meter", QuantityKind.Resistance, accuracy, step)
        {
            Ranges =
            [
                .. Enumerable.Range(-2, 4).Select(power => new MeterRange(
                    $"decade {power}", step * Math.Pow(10, power) * Of([1999, 3999, 5999]) + (Chance(0.2) ? largest : 0),
                    Chance(0.7) ? accuracy : new(Of(Percents), Of(Digits)), step * Math.Pow(10, power))),
            ],
        };

    private double[] Values(int count, double middle, double scatter, double step) =>
        [.. Enumerable.Range(0, count).Select(_ => Math.Max(0, Math.Round(middle + (scatter * Normal()))) * step)];

    private Limits LimitsAbout(Estimate estimate)
    {
        var near = estimate.Value + ((_random.NextDouble() * 3) - 1.5) * estimate.ExpandedUncertainty;
        var far = near + (Chance(0.5) ? 1 : -1) * (0.2 + (4 * _random.NextDouble())) * estimate.ExpandedUncertainty;
        return Chance(0.4) ? Limits.Of(Math.Min(near, far), Math.Max(near, far)) : far > near ? Limits.Of(near, null) : Limits.Of(null, near);
    }

    private Evaluation SomeEvaluation() => _random.Next(6) switch
    {
        0 => Evaluation.Classical,
        1 => Evaluation.Default with { Coverage = 0.95 },
        2 => Evaluation.Default with { Coverage = 0.99 },
        3 => Evaluation.Classical with { Coverage = 0.95 },
        _ => Evaluation.Default,
    };

    private bool Chance(double share) => _random.NextDouble() < share;

    private T Of<T>(T[] from) => from[_random.Next(from.Length)];

    private double Normal() => NormalDistribution.Quantile(1 - _random.NextDouble());
}
