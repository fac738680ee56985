using InspectLog.App.Ui.Drawings;

namespace InspectLog.App.Trends;

/// <summary>Turns trends into pictures in the unit people read.</summary>
public static class TrendPictures
{
    /// <summary>Readings a line needs before it is drawn with its band.</summary>
    private const int FewestForABand = 4;

    /// <summary>The picture of a trend.</summary>
    /// <param name="facts">The trend.</param>
    /// <param name="most">How many readings there is room for.</param>
    public static TrendPicture Of(TrendFacts facts, int most = TrendSeries.Most)
    {
        var (series, axis, trend) = (facts.Series, facts.Axis, facts.Trend);
        var unit = series.Measurand.DisplayUnit;
        double? In(double? value) => value is { } number ? unit.FromBase(number) : null;
        var limits = series.Measurand.Limits;
        var common = CommonPart.Of(series.Current);
        return new TrendPicture(
            [.. DrawnReadings.Of(series.Readings, most).Select(reading => new TrendMark(
                axis.At(reading.Inspection),
                unit.FromBase(reading.Value),
                unit.DifferenceFromBase(reading.ExpandedUncertainty),
                reading.IsOfAnEarlierPart))],
            In(limits?.Lower),
            In(limits?.Upper),
            trend.Line is { Count: >= FewestForABand } line
                ? x => (unit.FromBase(line.At(x)), unit.DifferenceFromBase(line.PredictionHalfWidth(x, common: common)))
                : null,
            facts.Outlook is Outlook.Ahead or Outlook.AheadAsAHint
                ? (trend.MeetsLimitAt!.Value, In(trend.Line!.Slope > 0 ? limits!.Upper : limits!.Lower)!.Value)
                : null);
    }
}
