namespace InspectLog.Measuring.Tests;

/// <content>Lines through readings, and windings referred to another temperature.</content>
public partial class ReferenceTests
{
    private const double Line = 1e-9;

    // points, lower, upper, slope, intercept, s, slopeError, interceptError, rSquared, why, edge, line, at, y, error,
    // prediction
    private static string? Foretold(string[] of)
    {
        TrendPoint[] points = [.. of[0].Split(';').Select(point => Reference.Numbers(point, ' ')).Select(p => new TrendPoint(p[0], p[1]))];
        var limits = of[1].Length + of[2].Length > 0 ? Reference.Limits(of[1], of[2]) : null;
        var trend = Trend.Of(points, limits);
        var because = Because(trend.Reason);
        return because != of[9] ? $"the reason is {trend.Reason ?? "none"}"
            : of[9] == "same" ? (trend.Line is null ? null : "there is a line")
            : trend.Line is not { } line ? "there is no line"
            : WrongLine(of, line, points) ?? WrongForecast(of, trend, line, points);
    }

    private static string? WrongLine(string[] of, TrendLine line, TrendPoint[] points)
    {
        var (y, x) = (points.Max(point => Math.Abs(point.Y)), points.Max(point => Math.Abs(point.X)));
        var width = Math.Sqrt(line.SumOfSquaresX);
        // A line through the points themselves leaves no scatter but the last digits of the readings.
        (string Name, double Found, double Scale)[] figures =
        [
            ("slope", line.Slope, 1e-3 * y / width),
            ("intercept", line.Intercept, 1e-3 * (y + (Math.Abs(line.Slope) * x))),
            ("scatter", line.ResidualStandardDeviation, 1e-5 * y),
            ("standard error of the slope", line.SlopeStandardError, 1e-5 * y / width),
            ("standard error of the intercept", line.InterceptStandardError, 1e-5 * y * (1 + (x / width))),
            ("share explained", line.RSquared, 1e-3),
        ];
        for (var i = 0; i < figures.Length; i++)
        {
            if (!Reference.Near(Reference.Number(of[3 + i]), figures[i].Found, Line, figures[i].Scale))
            {
                return $"the {figures[i].Name} is {figures[i].Found:R}";
            }
        }

        return null;
    }

    private static string? WrongForecast(string[] of, Trend trend, TrendLine line, TrendPoint[] points)
    {
        var at = Reference.Number(of[12]);
        var y = points.Max(point => Math.Abs(point.Y));
        return of[9].Length == 0 && !Reference.Near(Reference.Number(of[10]), trend.MeetsLimitAt, Line, Width(points))
                ? $"the edge meets the limit at {trend.MeetsLimitAt:R}"
            : of[9].Length == 0 && !Reference.Near(Reference.Number(of[11]), trend.LineMeetsLimitAt, Line, Width(points))
                ? $"the line meets the limit at {trend.LineMeetsLimitAt:R}"
            : !Reference.Near(Reference.Number(of[13]), line.At(at), Line, 1e-3 * y) ? $"the line there is at {line.At(at):R}"
            : !Reference.Near(Reference.Number(of[14]), line.StandardErrorAt(at), Line, 1e-5 * y)
                ? $"its standard error there is {line.StandardErrorAt(at):R}"
            : !Reference.Near(Reference.Number(of[15]), line.PredictionHalfWidth(at), Line, 1e-4 * y)
                ? $"the interval there is ±{line.PredictionHalfWidth(at):R}"
            : null;
    }

    private static double Width(TrendPoint[] points) => points.Max(point => point.X) - points.Min(point => point.X);

    private static string Because(string? reason) => reason switch
    {
        null => "",
        _ when reason.StartsWith("Not enough data", StringComparison.Ordinal) => "few",
        _ when reason.StartsWith("No clear slope", StringComparison.Ordinal) => "slope",
        _ when reason.StartsWith("All readings are from the same time", StringComparison.Ordinal) => "same",
        _ when reason.StartsWith("There is no limit", StringComparison.Ordinal) => "limit",
        _ when reason.StartsWith("The readings move away", StringComparison.Ordinal) => "away",
        _ => reason,
    };

    // what, a, b, at, to, within, constant, first, second
    private static string? Referred(string[] of)
    {
        var (a, b, at) = (Reference.Number(of[1]), Reference.Maybe(of[2]) ?? 0, Reference.Number(of[3]));
        var (to, constant) = (Reference.Maybe(of[4]) ?? 0, Reference.Maybe(of[6]) ?? 0);
        var (first, second) = of[0] switch
        {
            "value" => Copper.Refer(a, b, new(at, to, Reference.Number(of[5]), constant)),
            "limits" => Ends(Copper.Refer(Limits.Of(a, b), at, to, constant)),
            "hot" => (Copper.TemperatureOf(a, at, b, constant), 0),
            _ => (Copper.InferredZeroOf(a), Copper.Alpha(at, Copper.InferredZeroOf(a))),
        };
        return Reference.Near(Reference.Number(of[7]), first, 1e-12, of[0] == "hot" ? constant : 0)
            && Reference.Near(Reference.Number(of[8]), second, 1e-12) ? null : $"it gives {first:R} and {second:R}";
    }

    private static (double Lower, double Upper) Ends(Limits limits) => (limits.Lower ?? double.NaN, limits.Upper ?? double.NaN);
}
