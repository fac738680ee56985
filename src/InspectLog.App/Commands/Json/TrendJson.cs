using System.Text.Json.Serialization;
using InspectLog.Measuring;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>trend --json</c> writes. The line's figures are null where no line can be drawn.</summary>
/// <param name="Slope">Change of y for each unit of x.</param>
/// <param name="Intercept">y at x = 0.</param>
/// <param name="ResidualStandardDeviation">Scatter about the line.</param>
/// <param name="SlopeStandardError">Standard error of the slope.</param>
/// <param name="InterceptStandardError">Standard error of the intercept.</param>
/// <param name="MeetsLimitAt">The x at which the edge of the prediction interval meets the limit.</param>
/// <param name="Reason">Why there is no such x; null where there is.</param>
/// <param name="LineMeetsLimitAt">The x at which the line itself meets it.</param>
/// <param name="Points">How many points the line goes through.</param>
/// <param name="RSquared">Share of the variance of y the line explains, 0 to 1.</param>
/// <param name="SlopeInterceptCorrelation">Correlation of slope and intercept, −1 to 1.</param>
/// <param name="Predictions">With <c>--at</c>: what is foretold there.</param>
internal sealed record TrendJson(
    double? Slope,
    double? Intercept,
    double? ResidualStandardDeviation,
    double? SlopeStandardError,
    double? InterceptStandardError,
    double? MeetsLimitAt,
    string? Reason,
    double? LineMeetsLimitAt,
    int? Points,
    double? RSquared,
    double? SlopeInterceptCorrelation,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<PredictionJson>? Predictions)
{
    public static TrendJson From(Trend trend, IReadOnlyList<double> at) => new(
        trend.Line?.Slope,
        trend.Line?.Intercept,
        trend.Line?.ResidualStandardDeviation,
        trend.Line?.SlopeStandardError,
        trend.Line?.InterceptStandardError,
        trend.MeetsLimitAt,
        trend.Reason,
        trend.LineMeetsLimitAt,
        trend.Line?.Count,
        trend.Line?.RSquared,
        trend.Line?.Correlation,
        trend.Line is { } line && at.Count > 0 ? [.. at.Select(x => PredictionJson.From(line, x))] : null);
}

/// <summary>What is foretold at an x.</summary>
/// <param name="X">Where.</param>
/// <param name="Y">The line there.</param>
/// <param name="StandardError">Standard error of the line there.</param>
/// <param name="PredictionHalfWidth">Half the width of the interval a new reading is expected in (95.45 %).</param>
internal sealed record PredictionJson(double X, double Y, double StandardError, double PredictionHalfWidth)
{
    public static PredictionJson From(TrendLine line, double x) =>
        new(x, line.At(x), line.StandardErrorAt(x), line.PredictionHalfWidth(x));
}
