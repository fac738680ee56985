using InspectLog.App.Bench;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>Trends in words. A forecast is said as what a reading could show, never as what a part will do.</summary>
public static class TrendWords
{
    /// <summary>The name of a series: "Lead resistance, lead 4".</summary>
    public static string Name(TrendSeries series) => Places.Under(series.Check, series.Cylinder);

    /// <summary>The name of its place: "Lead 4".</summary>
    public static string Place(TrendSeries series) => Places.NameOf(series.Check, series.Cylinder);

    /// <summary>First and last value: "6.24 kΩ, then 6.31 kΩ". Where the part is another since, one alone, and since what.
    /// </summary>
    public static string Values(TrendFacts facts)
    {
        var readings = facts.Series.Current;
        var last = Value(facts.Series, readings[^1]);
        return readings.Count > 1 ? $"{Value(facts.Series, readings[0])}, then {last}" : $"{last} since it was {facts.Series.Renewal}";
    }

    /// <summary>A reading's value in the check's unit.</summary>
    public static string Value(TrendSeries series, TrendReading reading) =>
        RecordWords.Value(reading.Reading.Body, series.Check);

    /// <summary>What the trend says, in a few words for a small drawing.</summary>
    public static string InBrief(TrendFacts facts) => facts.Outlook switch
    {
        Outlook.BeyondAlready => $"The last reading is beyond the limit{Unsure(facts)}.",
        Outlook.AnyTimeNow => $"{Direction(facts)}: a reading at the limit would be no surprise now.",
        Outlook.Ahead or Outlook.AheadAsAHint =>
            $"{Direction(facts)}: could read at the limit from about {facts.Axis.About(facts.Trend.MeetsLimitAt!.Value)}.",
        Outlook.FarOff => $"{Direction(facts)}, with the limit far off.",
        _ => facts.Trend.Reason ?? "",
    };

    /// <summary>What the trend says, in full sentences.</summary>
    public static IReadOnlyList<string> InFull(TrendFacts facts) => [.. Forecast(facts), .. Caveats(facts)];

    /// <summary>The slope with what is known of it: "0.12 Ω ± 0.05 Ω a year, rising"; null without a line.</summary>
    public static string? Slope(TrendFacts facts)
    {
        if (facts.Trend.Line is not { } line)
        {
            return null;
        }

        var step = facts.Axis.SlopeStep;
        var spread = StudentDistribution.Factor(Coverage.Probability, line.Count - 2) * line.SlopeStandardError * step;
        var unit = facts.Series.Measurand.DisplayUnit;
        var (value, uncertainty) = Difference(line.Slope * step, spread, unit);
        return $"{value} ± {uncertainty} {facts.Axis.SlopeWords}";
    }

    /// <summary>The limit the line runs towards: "the upper limit, 22 kΩ"; null where there is none.</summary>
    public static string? Limit(TrendFacts facts)
    {
        var limits = facts.Series.Measurand.Limits;
        var unit = facts.Series.Measurand.DisplayUnit;
        return facts.Trend.Line?.Slope > 0
            ? limits?.Upper is { } upper ? $"the upper limit, {Printed.Value(upper, unit)}" : null
            : limits?.Lower is { } lower ? $"the lower limit, {Printed.Value(lower, unit)}" : null;
    }

    private static IEnumerable<string> Forecast(TrendFacts facts)
    {
        var (axis, trend) = (facts.Axis, facts.Trend);
        var at = axis.Odometer is null ? "in" : "at";
        switch (facts.Outlook)
        {
            case Outlook.BeyondAlready:
                yield return $"The last reading lies beyond the limit already{Unsure(facts)}, so there is nothing left to foretell.";
                break;
            case Outlook.AnyTimeNow:
                yield return $"A reading at {Limit(facts)}, would be no surprise now: the edge of the band met it {at} about {axis.About(trend.MeetsLimitAt!.Value)}.";
                break;
            case Outlook.FarOff:
                yield return $"There is a slope, but {Limit(facts)}, is more than ten times as far ahead as the readings reach back. No time can be named for that.";
                break;
            case Outlook.Ahead or Outlook.AheadAsAHint:
                yield return $"If it goes on like this, the edge of the band meets {Limit(facts)}, {at} about {axis.About(trend.MeetsLimitAt!.Value)}: from then on a reading there would be no surprise.";
                yield return $"The line itself meets it {at} about {axis.About(trend.LineMeetsLimitAt!.Value)}.";
                break;
            default:
                yield return trend.Reason ?? "Nothing can be foretold.";
                break;
        }
    }

    private static IEnumerable<string> Caveats(TrendFacts facts)
    {
        if (facts.Outlook == Outlook.AheadAsAHint)
        {
            yield return "That is farther ahead than the readings reach back, so take it as a hint and measure again before then.";
        }

        if (facts.Outlook is Outlook.Ahead or Outlook.AheadAsAHint)
        {
            yield return "It takes for granted that the part goes on changing evenly. Parts also fail without warning.";
        }

        if (facts.Series.Current.Count < facts.Series.Readings.Count)
        {
            yield return $"It was {facts.Series.Renewal} in between. Readings from before are drawn hollow and left out of the line.";
        }
    }

    // The trend goes by the value alone; how sure its decision was is said with it, as the report says it.
    private static string Unsure(TrendFacts facts) =>
        facts.Series.Current[^1].Reading.Body.Conformity is { Decision: var decision } && decision.IsUnclear()
            ? ", though too close to it to be sure"
            : "";

    private static string Direction(TrendFacts facts) => facts.Trend.Line?.Slope > 0 ? "Rising" : "Falling";

    private static (string Value, string Spread) Difference(double value, double spread, Unit unit)
    {
        // A change has no zero point of its own: 5 °C of change are 9 °F, not 41 °F.
        var (number, uncertainty) = Printed.UncertainNumbers(unit.ToBase(0) + value, spread, unit);
        var space = unit.Symbol == "°" ? "" : "\u00a0";
        return ($"{number}{space}{unit.Symbol}", $"{uncertainty}{space}{unit.Symbol}");
    }
}
