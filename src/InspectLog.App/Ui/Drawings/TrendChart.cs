using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Ui.Drawings;

/// <summary>Draws trends: readings with their uncertainty over time or distance, the line through them with its
/// prediction band, and the allowed span as the reading strip has it.</summary>
public static class TrendChart
{
    private const double BesideLabel = 16;
    private const double WidthOfLetter = 7.8;
    private const double LabelRow = 26;
    private const double Edge = 8;
    private const double HeightOfLabel = 18;
    private const double WidthOfLabel = 84;
    private const int Steps = 32;

    /// <summary>How far the line is drawn beyond the last reading, as a share of the time between first and last.</summary>
    private const double LookAhead = 0.25;

    /// <summary>A limit is met in the drawing where it comes within so many times that time.</summary>
    private const double FarthestLook = 2.5;

    /// <summary>Draws a trend.</summary>
    /// <param name="picture">What it shows; at least one point.</param>
    /// <param name="width">Width, pixels.</param>
    /// <param name="height">Height, pixels.</param>
    /// <param name="ticks">Gives round places on the horizontal axis: from, to, and how many at most.</param>
    /// <param name="meets">Writes where the band meets a limit.</param>
    /// <param name="value">Writes a value with its unit.</param>
    public static TrendDrawing Draw(
        TrendPicture picture,
        double width,
        double height,
        Func<double, double, int, IReadOnlyList<Tick>> ticks,
        Func<double, string> meets,
        Func<double, string> value)
    {
        var frame = new TrendFrame(LabelColumn(picture, value), Edge, width - Edge, height - LabelRow);
        var x = Across(picture, frame);
        var y = Upwards(picture, frame);
        double Y(double v) => frame.Bottom - y.At(v);
        var met = picture.Meets is { } crossing && x.Holds(crossing.X)
            ? new StripPoint(x.At(crossing.X), Y(crossing.Limit))
            : (StripPoint?)null;
        return new TrendDrawing(
            width,
            height,
            frame,
            picture is { Lower: null, Upper: null }
                ? null
                : (picture.Upper is { } upper ? Y(upper) : frame.Top, picture.Lower is { } lower ? Y(lower) : frame.Bottom),
            [.. LimitsOf(picture).Select(Y)],
            Band(picture, x, y, Y),
            Line(picture, x, y, Y),
            [.. picture.Points.Select(point => new TrendBar(
                x.At(point.X), Y(point.Value), Y(point.Value + point.Spread), Y(point.Value - point.Spread), point.Hollow))],
            met,
            Below(picture, x, met, ticks, meets),
            Beside(picture, y, frame, value));
    }

    /// <summary>Room for the longest label beside the field.</summary>
    private static double LabelColumn(TrendPicture picture, Func<double, string> value) =>
        BesideLabel + (WidthOfLetter * Beside(picture, Upwards(picture, new(0, 0, 0, 100)), new(0, 0, 0, 100), value)
            .Select(label => label.Text.Length).DefaultIfEmpty().Max());

    private static Scale Across(TrendPicture picture, TrendFrame frame)
    {
        var first = picture.Points.Min(point => Scale.Bounded(point.X));
        var last = picture.Points.Max(point => Scale.Bounded(point.X));
        var span = last > first ? last - first : 1;
        var to = picture.Line is null ? last : last + (LookAhead * span);
        if (picture.Meets is { } meets && meets.X > to && meets.X - last <= FarthestLook * span)
        {
            to = meets.X + (0.06 * (meets.X - first));
        }

        var (from, end) = (first - (0.04 * span), Math.Max(to, last + (0.04 * span)));
        return end > from
            ? new Scale(from, end, frame.Left, frame.Right)
            : new Scale(from - Math.Abs(from), end + Math.Abs(end), frame.Left, frame.Right);
    }

    private static Scale Upwards(TrendPicture picture, TrendFrame frame)
    {
        var values = picture.Points.SelectMany(point => new[] { point.Value - point.Spread, point.Value + point.Spread })
            .Concat(LimitsOf(picture)).Select(Scale.Bounded).ToList();
        var (low, high) = (values.Min(), values.Max());
        var room = high > low ? 0.1 * (high - low) : Math.Max(Math.Abs(high) * 0.1, 1e-9);
        return new Scale(low - room, high + room, 0, frame.Bottom - frame.Top);
    }

    private static IEnumerable<double> LimitsOf(TrendPicture picture) =>
        new[] { picture.Lower, picture.Upper }.OfType<double>();

    // Bounded by both edges of the field where the band leaves it: between the cuts it runs along them.
    private static IReadOnlyList<StripPoint> Band(TrendPicture picture, Scale x, Scale field, Func<double, double> y)
    {
        if (picture.Line is not { } line)
        {
            return [];
        }

        var upper = Edge(at => line(at).Middle + line(at).HalfWidth);
        var lower = Edge(at => line(at).Middle - line(at).HalfWidth);
        return [.. upper, .. lower.Reverse()];

        IEnumerable<StripPoint> Edge(Func<double, double> edge) => FieldCut
            .WithCuts([.. Places(x).Select(at => new StripPoint(at, edge(at)))], field)
            .Select(point => new StripPoint(x.At(point.X), y(point.Y)));
    }

    // Only what lies in the field: a line that leaves it ends there.
    private static IReadOnlyList<StripPoint> Line(TrendPicture picture, Scale x, Scale field, Func<double, double> y) =>
        picture.Line is { } line
            ? [.. FieldCut.Within([.. Places(x).Select(at => new StripPoint(at, line(at).Middle))], field)
                .Select(point => new StripPoint(x.At(point.X), y(point.Y)))]
            : [];

    private static IEnumerable<double> Places(Scale x) =>
        Enumerable.Range(0, Steps + 1).Select(step => x.From + (step * (x.To - x.From) / Steps));

    /// <summary>Where the band meets a limit is labelled first; round places only where they leave it room.</summary>
    private static IReadOnlyList<StripLabel> Below(
        TrendPicture picture,
        Scale x,
        StripPoint? met,
        Func<double, double, int, IReadOnlyList<Tick>> ticks,
        Func<double, string> meets)
    {
        var labels = new List<StripLabel>();
        if (met is { } point)
        {
            labels.Add(Label(x, point.X, meets(picture.Meets!.Value.X)));
        }

        var most = Math.Max(1, (int)((x.Right - x.Left) / WidthOfLabel));
        labels.AddRange(ticks(x.From, x.To, most)
            .Select(tick => Label(x, x.At(tick.At), tick.Label))
            .Where(tick => met is not { } taken || Math.Abs(tick.At - Label(x, taken.X, "").At) >= WidthOfLabel));
        return labels;
    }

    /// <summary>A label near an end is moved in, so that it stays whole.</summary>
    private static StripLabel Label(Scale x, double at, string text) =>
        at > x.Right - (WidthOfLabel / 2) ? new(Math.Min(at + 20, x.Right + Edge), "end", text)
        : at < x.Left + (WidthOfLabel / 2) ? new(Math.Max(at - 12, x.Left - 12), "start", text)
        : new(at, "middle", text);

    /// <summary>Limits are labelled first; round values only where they leave them room.</summary>
    private static IReadOnlyList<StripLabel> Beside(
        TrendPicture picture, Scale y, TrendFrame frame, Func<double, string> value)
    {
        var limits = LimitsOf(picture).Select(limit => new StripLabel(frame.Bottom - y.At(limit), "end", value(limit))).ToList();
        var most = Math.Max(2, (int)((frame.Bottom - frame.Top) / 44));
        return
        [
            .. limits,
            .. Ticks.Round(y.From, y.To, most, value)
                .Select(tick => new StripLabel(frame.Bottom - y.At(tick.At), "end", tick.Label))
                .Where(tick => limits.TrueForAll(limit => Math.Abs(limit.At - tick.At) >= HeightOfLabel)),
        ];
    }
}
