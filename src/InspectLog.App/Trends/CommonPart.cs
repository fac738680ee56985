using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>What the readings of a trend have in common: the error of the instrument, where one took them all. It moves the
/// whole line, and the scatter about the line does not show it.</summary>
public static class CommonPart
{
    /// <summary>Its expanded uncertainty (95.45 %), base unit: that of the reading where it is largest. 0 where several
    /// instruments took part, whose errors then show as scatter, and for gauges.</summary>
    public static double Of(IReadOnlyList<TrendReading> readings)
    {
        var instruments = readings.Select(reading => reading.Reading.Body.Instrument?.Id).Distinct().ToList();
        return instruments is [not null]
            ? Coverage.BoxFactor * readings.Max(AccuracyOf)
            : 0;
    }

    private static double AccuracyOf(TrendReading reading) => reading.Reading.Body.Reading is DisplayedReading displayed
        ? Budget.Rectangular(displayed.Accuracy.HalfWidth(reading.Value, displayed.Resolution))
        : 0;
}
