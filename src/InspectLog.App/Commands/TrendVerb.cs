using System.CommandLine;
using System.Globalization;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Fits a line to readings and says when it meets a limit.</summary>
internal sealed class TrendVerb : Verb
{
    private readonly Option<double?> _lower = StrictNumber.Option("--lower", "Lower limit; leave out for none.");
    private readonly Option<double?> _upper = StrictNumber.Option("--upper", "Upper limit; leave out for none.");
    private readonly Option<bool> _json = JsonLines.Option();

    public TrendVerb(Surroundings surroundings)
        : base(
            "trend",
            "Fit a straight line to readings over time or distance, read from standard input as x,y lines, and say when the "
                + "edge of the prediction interval meets a limit.",
            surroundings)
    {
        foreach (var option in new Option[] { _lower, _upper, _json })
            Add(option);
    }

    public override IReadOnlyList<string> Examples => ["inspectlog trend --upper 2.0 --json < coil-circuit.csv"];

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var points = await PointsAsync(stop);
        var trend = Fit(points, arguments.GetValue(_lower), arguments.GetValue(_upper));
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(TrendJson.From(trend));
        else
            Write(trend);
        return ExitCodes.Done;
    }

    private static Trend Fit(List<TrendPoint> points, double? lower, double? upper)
    {
        try
        {
            return Trend.Of(points, lower is null && upper is null ? null : Limits.Of(lower, upper));
        }
        catch (ArgumentException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }

    private void Write(Trend trend)
    {
        if (trend.Line is { } line)
            Surroundings.Out.WriteLine(Invariant($"Slope {line.Slope:G6} ± {line.SlopeStandardError:G3}, intercept {line.Intercept:G6}, scatter {line.ResidualStandardDeviation:G3}."));
        Surroundings.Out.WriteLine(trend.MeetsLimitAt is { } at ? Invariant($"Meets its limit at {at:G6}.") : trend.Reason);
    }

    private async Task<List<TrendPoint>> PointsAsync(CancellationToken stop)
    {
        var points = new List<TrendPoint>();
        while (await Surroundings.In.ReadLineAsync(stop) is { } line)
        {
            if (line.Trim().Length > 0)
                points.Add(Point(line));
        }

        return points;
    }

    private static TrendPoint Point(string line)
    {
        const NumberStyles style = NumberStyles.Float;
        return line.Split(',', StringSplitOptions.TrimEntries) is [var x, var y]
            && double.TryParse(x, style, CultureInfo.InvariantCulture, out var when)
            && double.TryParse(y, style, CultureInfo.InvariantCulture, out var value)
            ? new TrendPoint(when, value)
            : throw CommandException.BadInput($"\"{line}\" is not a pair of numbers. Write each as x,y with points for decimals, such as 120,1.85.");
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
