namespace InspectLog.Measuring;

/// <summary>What would make a doubtful answer clear, by the non-binary rule.</summary>
/// <param name="UncertaintyNeeded">The largest expanded uncertainty with which this value would be a clear pass or fail,
/// base unit: its distance from the nearer limit. 0 for a value on the limit, which nothing makes clear.</param>
/// <param name="ReadingsNeeded">How many readings in all would do, if the next ones scatter as the first; null where no
/// sensible number does, or where a single reading says nothing of the scatter.</param>
/// <param name="AccuracyNeeded">The instrument accuracy, ± in the base unit at this value, that would do with everything
/// else as it is; null where none does.</param>
/// <param name="Improvements">What can be done with the means at hand, best first; empty where nothing helps.</param>
public sealed record Advice(
    double UncertaintyNeeded,
    int? ReadingsNeeded,
    double? AccuracyNeeded,
    IReadOnlyList<Improvement> Improvements)
{
    private const int MostReadings = 30;

    // An improvement of less than a twentieth is not worth a sentence.
    private const double WorthSaying = 0.95;

    /// <summary>Works out advice for a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="limits">The limits it is decided against.</param>
    /// <param name="instrument">The instrument it was taken with, for its other ranges; null where unknown.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why.</exception>
    public static Advice For(Reading reading, Limits limits, Instrument? instrument = null)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var estimate = Estimate.Of(reading);
        var needed = Math.Abs(Zones.Inside(estimate.Value, limits));
        return reading switch
        {
            DisplayedReading displayed => For(displayed, estimate, needed, instrument),
            Bracket bracket => new(needed, null, null, [CloserGauges(bracket)]),
            _ => new(needed, null, null, []),
        };
    }

    /// <summary>Works out how small the uncertainty would have to be, for a value of which nothing more is known.</summary>
    public static Advice For(in Estimate estimate, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return new(Math.Abs(Zones.Inside(estimate.Value, limits)), null, null, []);
    }

    private static Improvement CloserGauges(Bracket bracket)
    {
        var quarter = (bracket.Stops - bracket.Goes) / 4;
        var closer = bracket with { Goes = bracket.Goes + quarter, Stops = bracket.Stops - quarter };
        return new("use gauges half as far apart", Estimate.Of(closer).ExpandedUncertainty);
    }

    private static Advice For(DisplayedReading reading, Estimate estimate, double needed, Instrument? instrument)
    {
        var readings = ReadingsFor(reading, estimate, needed);
        var now = estimate.ExpandedUncertainty;
        return new Advice(needed, readings, AccuracyFor(estimate, needed), [..
            RepeatMore(reading, estimate, readings)
                .Concat(OtherRanges(reading, instrument))
                .Concat(WithoutLeads(reading))
                .Concat(WindingTemperature(reading))
                .Where(improvement => improvement.ExpandedUncertainty < WorthSaying * now)
                .OrderBy(improvement => improvement.ExpandedUncertainty)]);
    }

    private static int? ReadingsFor(DisplayedReading reading, in Estimate estimate, double needed)
    {
        if (estimate.ExpandedUncertainty <= needed)
        {
            return reading.Values.Count;
        }

        for (var count = reading.Values.Count + 1; reading.Values.Count > 1 && count <= MostReadings; count++)
        {
            if (WithReadings(reading, estimate, count) <= needed)
            {
                return count;
            }
        }

        return null;
    }

    private static double WithReadings(DisplayedReading reading, in Estimate estimate, int count)
    {
        var line = IndexOf(estimate, ContributionNames.Repeats);
        var u = estimate.Contributions[line].StandardUncertainty * Math.Sqrt((double)reading.Values.Count / count);
        return Changed.Expanded(estimate, line, u, count - 1);
    }

    // Searched between nothing and all that is needed, which is too much, since it counts at least twice.
    private static double? AccuracyFor(in Estimate estimate, double needed)
    {
        var line = IndexOf(estimate, ContributionNames.Accuracy);
        if (Changed.Expanded(estimate, line, 0, double.PositiveInfinity) > needed)
        {
            return null;
        }

        var (enough, tooMuch) = (0.0, needed);
        for (var i = 0; i < 60; i++)
        {
            var between = (enough + tooMuch) / 2;
            (enough, tooMuch) = Changed.Expanded(estimate, line, between, double.PositiveInfinity) <= needed
                ? (between, tooMuch)
                : (enough, between);
        }

        return enough * Math.Sqrt(3);
    }

    private static IEnumerable<Improvement> RepeatMore(DisplayedReading reading, Estimate estimate, int? readings)
    {
        if (reading.Values.Count > 1)
        {
            var count = Math.Max(readings ?? 0, Math.Min(2 * reading.Values.Count, MostReadings));
            yield return new($"take {count} readings in all", WithReadings(reading, estimate, count));
        }
    }

    private static IEnumerable<Improvement> OtherRanges(DisplayedReading reading, Instrument? instrument) =>
        from range in instrument?.Ranges ?? []
        where reading.Values.All(value => Math.Abs(value) <= range.FullScale)
        let finer = reading with { Accuracy = range.Accuracy, Resolution = range.Resolution }
        select new Improvement($"use the {range.Name} range", Estimate.Of(finer).ExpandedUncertainty);

    private static IEnumerable<Improvement> WithoutLeads(DisplayedReading reading)
    {
        var allowances = reading.Allowances ?? [];
        if (reading.Leads is not null || allowances.Any(IsForLeads))
        {
            var own = reading.Leads is { } leads ? Sample.Of(leads.Values).Mean : 0;
            var nulled = reading with
            {
                Leads = null,
                Values = [.. reading.Values.Select(value => value - own)],
                Allowances = [.. allowances.Where(allowance => !IsForLeads(allowance))],
            };
            yield return new("null the test leads", Estimate.Of(nulled).ExpandedUncertainty);
        }
    }

    private static bool IsForLeads(Allowance allowance) => allowance.Source == AllowanceSource.TestLeads;

    private static IEnumerable<Improvement> WindingTemperature(DisplayedReading reading)
    {
        if (reading.Winding is { HalfWidth: > 1 } winding)
        {
            yield return new(
                "measure the winding's temperature to ±1 °C",
                Estimate.Of(reading with { Winding = winding with { HalfWidth = 1 } }).ExpandedUncertainty);
        }
    }

    // Every displayed reading has the lines that are looked for.
    private static int IndexOf(in Estimate estimate, string name)
    {
        var i = 0;
        while (estimate.Contributions[i].Name != name)
        {
            i++;
        }

        return i;
    }
}

/// <summary>Something that can be done, and what it would bring.</summary>
/// <param name="Action">What to do, as the middle of a sentence: "use the 20 kΩ range".</param>
/// <param name="ExpandedUncertainty">What the expanded uncertainty would come down to, base unit.</param>
public sealed record Improvement(string Action, double ExpandedUncertainty)
{
    /// <summary>Whether that would be enough for a clear answer, if the value stays where it is.</summary>
    public bool Settles(Advice advice) => ExpandedUncertainty <= advice.UncertaintyNeeded;
}
