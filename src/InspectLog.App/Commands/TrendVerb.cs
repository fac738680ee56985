using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Fits a line to readings and says when it meets a limit.</summary>
internal sealed class TrendVerb : Verb
{
    private readonly Option<double?> _lower = StrictNumber.Option("--lower", "Lower limit; leave out for none.");
    private readonly Option<double?> _upper = StrictNumber.Option("--upper", "Upper limit; leave out for none.");

    private readonly Option<double[]> _at = StrictNumber.RepeatedOption(
        "--at", "An x to foretell the reading at, with its standard error and prediction interval. Give it again for each.");

    private readonly Option<bool> _json = JsonLines.Option();

    public TrendVerb(Surroundings surroundings)
        : base(
            "trend",
            "Fit a straight line by least squares to readings over time or distance, read from standard input as x,y lines "
                + "(a heading and blank lines are passed over), and say when the edge of the prediction interval (95.45 %) "
                + "meets a limit.",
            surroundings)
    {
        foreach (var option in new Option[] { _lower, _upper, _at, _json })
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog trend --lower 0.6 --json < coil-circuit.csv",
        "inspectlog trend --lower 10 --at 120000 < insulation.csv",
    ];

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var points = await TrendInput.ReadAsync(Surroundings.In, stop);
        var trend = Fit(points, arguments.GetValue(_lower), arguments.GetValue(_upper));
        double[] at = arguments.GetValue(_at) ?? [];
        if (at.Length > 0 && trend.Line is null)
            throw CommandException.BadInput($"Nothing can be foretold with --at. {trend.Reason}");
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(TrendJson.From(trend, at));
        else
            Write(trend, at);
        return ExitCodes.Done;
    }

    private static Trend Fit(IReadOnlyList<TrendPoint> points, double? lower, double? upper)
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

    private void Write(Trend trend, double[] at)
    {
        if (trend.Line is { } line)
        {
            Say($"Slope {line.Slope:G6} (standard error {line.SlopeStandardError:G3}), intercept {line.Intercept:G6} (standard error {line.InterceptStandardError:G3}), scatter {line.ResidualStandardDeviation:G3}.");
            foreach (var x in at)
                Say($"At {x:G6}: {line.At(x):G6}, a reading there within ± {line.PredictionHalfWidth(x):G3} (95.45 %).");
        }

        if (trend.MeetsLimitAt is { } edge)
            Say($"The edge of the prediction interval meets the limit at {edge:G6}, the line itself at {trend.LineMeetsLimitAt:G6}.");
        else
            Surroundings.Out.WriteLine(trend.Reason);
    }

    private void Say(FormattableString text) => Surroundings.Out.WriteLine(FormattableString.Invariant(text));
}
