namespace InspectLog.Measuring;

/// <summary>What can be done about the uncertainty of a reading: each is the same reading as it would then be, so that what
/// is promised is what doing it brings.</summary>
internal static class Improvements
{
    /// <summary>The most readings anybody is asked for.</summary>
    internal const int MostReadings = 30;

    /// <summary>The reading with more repeats that have the same mean and scatter as those there are, or as is known from
    /// before.</summary>
    /// <param name="reading">The reading; two values or more, or one of known scatter.</param>
    /// <param name="count">How many in all.</param>
    internal static DisplayedReading WithReadings(DisplayedReading reading, int count)
    {
        var sample = Sample.Of(reading.Values);
        // Two of them lie apart, the others on the mean.
        var scatter = sample.Count > 1 ? sample.StandardDeviation : reading.Scatter?.StandardDeviation ?? 0;
        var apart = scatter * Math.Sqrt((count - 1) / 2.0);
        return reading with
        {
            Values = [sample.Mean - apart, sample.Mean + apart, .. Enumerable.Repeat(sample.Mean, count - 2)],
        };
    }

    /// <summary>Whether anything says how far the next readings would scatter.</summary>
    internal static bool SaysScatter(DisplayedReading reading) => reading.Values.Count > 1 || reading.Scatter is not null;

    /// <summary>Everything that may help a displayed reading, in no order.</summary>
    internal static IEnumerable<(string Action, Reading Then)> Of(DisplayedReading reading, int? readings, Instrument? instrument) =>
        MoreReadings(reading, readings)
            .Concat(OtherRanges(reading, instrument))
            .Concat(NulledLeads(reading))
            .Concat(WindingTemperature(reading));

    /// <summary>Gauges half as far apart; none where their tolerances would then overlap, since such a bracket is
    /// refused.</summary>
    internal static IEnumerable<(string Action, Reading Then)> Of(Bracket bracket)
    {
        var quarter = (bracket.Stops - bracket.Goes) / 4;
        if (!FeelerBlades.Overlap(2 * quarter, Tolerances(bracket)))
        {
            yield return (
                "use gauges half as far apart",
                bracket with { Goes = bracket.Goes + quarter, Stops = bracket.Stops - quarter });
        }
    }

    // Where they are not on file: two single blades of one tolerance t have √2·t/3.
    private static double Tolerances(Bracket bracket) =>
        bracket.Tolerances ?? (3 * Math.Sqrt(2) * bracket.GaugeUncertainty.GetValueOrDefault());

    private static IEnumerable<(string Action, Reading Then)> MoreReadings(DisplayedReading reading, int? readings)
    {
        if (reading.Values.Count is < MostReadings and var now && SaysScatter(reading))
        {
            var count = Math.Max(readings ?? 0, Math.Min(2 * now, MostReadings));
            yield return ($"take {count} readings in all", WithReadings(reading, count));
        }
    }

    // Leads that were read with the same meter are read on the other range as well.
    private static IEnumerable<(string Action, Reading Then)> OtherRanges(DisplayedReading reading, Instrument? instrument) =>
        from range in instrument?.Ranges ?? []
        where reading.Values.Concat(reading.Leads?.Values ?? []).All(value => Math.Abs(value) <= range.FullScale)
            && Reach(reading.Values, range.Accuracy, range.Resolution) < Reach(reading.Values, reading.Accuracy, reading.Resolution)
        let leads = reading.Leads is { SameInstrument: true } own
            ? own with { Accuracy = range.Accuracy, Resolution = range.Resolution }
            : reading.Leads
        select (
            $"use the {range.Name} range",
            (Reading)(reading with { Accuracy = range.Accuracy, Resolution = range.Resolution, Leads = leads }));

    // How far a reading on a range may be off in all: by the classical evaluation U may fall on a coarser one.
    private static double Reach(IReadOnlyList<double> values, Accuracy accuracy, double resolution) =>
        accuracy.HalfWidth(values.Max(Math.Abs), resolution) + (resolution / 2);

    private static IEnumerable<(string Action, Reading Then)> NulledLeads(DisplayedReading reading)
    {
        var allowances = reading.Allowances ?? [];
        if (reading.Leads is not null || allowances.Any(IsForLeads))
        {
            var own = reading.Leads is { } leads ? Sample.Of(leads.Values).Mean : 0;
            yield return ("null the test leads", reading with
            {
                Leads = null,
                Values = [.. reading.Values.Select(value => value - own)],
                Allowances =
                [
                    .. allowances.Where(allowance => !IsForLeads(allowance)),
                    new(AllowanceSource.Zeroing, reading.Resolution / 2),
                ],
            });
        }
    }

    private static bool IsForLeads(Allowance allowance) => allowance.Source == AllowanceSource.TestLeads;

    private static IEnumerable<(string Action, Reading Then)> WindingTemperature(DisplayedReading reading)
    {
        if (reading.Winding is { HalfWidth: > 1 } winding)
        {
            yield return (
                "measure the winding's temperature to ±1 °C", reading with { Winding = winding with { HalfWidth = 1 } });
        }
    }
}
