using CsCheck;
using InspectLog.App.Ui.Drawings;

namespace InspectLog.App.Tests.Ui;

/// <summary>Drawing trends.</summary>
public sealed class TrendChartTests
{
    private static readonly Func<double, double, int, IReadOnlyList<Tick>> Round =
        (from, to, most) => Ticks.Round(from, to, most, x => $"{x}");

    [Fact]
    public void Higher_values_are_drawn_higher_and_later_ones_to_the_right()
    {
        var drawing = Draw(Picture([(0, 1), (10, 2), (20, 3)]));

        Assert.Equal(drawing.Bars.OrderBy(bar => bar.X), drawing.Bars);
        Assert.Equal(drawing.Bars.OrderByDescending(bar => bar.Y), drawing.Bars);
        Assert.All(drawing.Bars, bar => Assert.True(bar.Top < bar.Y && bar.Y < bar.Bottom));
    }

    [Fact]
    public void Allowed_span_reaches_from_limit_to_limit_and_runs_on_where_there_is_none()
    {
        var both = Draw(Picture([(0, 1), (10, 2)]) with { Lower = 0.5, Upper = 3 });
        var upper = Draw(Picture([(0, 1), (10, 2)]) with { Upper = 3 });

        Assert.Equal(both.Limits.Order(), [both.Allowed!.Value.Top, both.Allowed.Value.Bottom]);
        Assert.Equal(upper.Frame.Bottom, upper.Allowed!.Value.Bottom);
        Assert.Null(Draw(Picture([(0, 1), (10, 2)])).Allowed);
    }

    [Fact]
    public void Crossing_in_reach_is_drawn_on_its_limit_with_its_own_label()
    {
        var drawing = Draw(Picture([(0, 1), (10, 2)]) with { Upper = 3, Line = x => (1 + (x / 10), 0.1), Meets = (19, 3) });

        Assert.Equal(drawing.Limits[0], drawing.Meets!.Value.Y, 1e-9);
        Assert.InRange(drawing.Meets.Value.X, drawing.Bars[^1].X, drawing.Frame.Right);
        Assert.Contains(drawing.Below, label => label.Text == "meets at 19");
    }

    [Fact]
    public void Crossing_out_of_reach_is_left_to_the_words() =>
        Assert.Null(Draw(Picture([(0, 1), (10, 2)]) with { Upper = 30, Line = x => (1 + (x / 10), 0.1), Meets = (290, 30) }).Meets);

    [Fact]
    public void Single_reading_and_equal_readings_can_be_drawn()
    {
        Assert.Single(Draw(Picture([(5, 0)])).Bars);
        Assert.Equal(2, Draw(new([new(5, 7, 0, false), new(6, 7, 0, true)], null, null, null, null)).Bars.Count);
    }

    [Fact]
    public void Everything_stays_in_the_field_and_labels_stay_apart() => Gen.Select(
            Gen.Select(Gen.Double[0, 4000], Gen.Double[-50, 50]).Array[1, 8], Gen.Double[-60, 60], Gen.Double[0, 30], Gen.Int[216, 700])
        .Sample((points, limit, halfWidth, width) =>
        {
            var drawing = TrendChart.Draw(
                Picture(points) with { Upper = limit, Line = x => (x / 100, halfWidth), Meets = (points.Max(p => p.Item1) + 100, limit) },
                width, 200, Round, x => $"{x:0}", y => $"{y:0.###}");
            var frame = drawing.Frame;
            Assert.All(
                drawing.Band.Concat(drawing.Line).Concat(drawing.Bars.Select(bar => new StripPoint(bar.X, bar.Y))),
                point => Assert.True(
                    point.X >= frame.Left - 1e-6 && point.X <= frame.Right + 1e-6 && point.Y >= frame.Top - 1e-6 && point.Y <= frame.Bottom + 1e-6));
            Assert.All(
                drawing.Beside.OrderBy(label => label.At).Zip(drawing.Beside.OrderBy(label => label.At).Skip(1)),
                pair => Assert.True(pair.Second.At - pair.First.At >= 14));
        });

    // From 1 at 0 the line rises by 1 in 10; the field ends a tenth above the highest reading and its uncertainty.
    [Fact]
    public void Line_that_leaves_the_field_ends_at_its_edge_without_a_bend()
    {
        var drawing = Draw(Picture([(0, 1), (10, 2), (20, 1.2)]) with { Line = x => (1 + (x / 10), 0.3) });

        Assert.Equal(drawing.Frame.Top, drawing.Line[^1].Y, 1e-6);
        Assert.True(drawing.Line[^1].X < drawing.Frame.Right - 10);
        var slope = (drawing.Line[^1].Y - drawing.Line[0].Y) / (drawing.Line[^1].X - drawing.Line[0].X);
        Assert.All(drawing.Line, point => Assert.Equal(
            drawing.Line[0].Y + (slope * (point.X - drawing.Line[0].X)), point.Y, 1e-6));
    }

    [Fact]
    public void Band_that_leaves_the_field_keeps_its_edges_straight_up_to_the_cut()
    {
        var drawing = Draw(Picture([(0, 1), (10, 2), (20, 1.2)]) with { Line = x => (1 + (x / 10), 0.3) });
        var within = drawing.Band.Take(drawing.Band.Count / 2).Where(point => point.Y > drawing.Frame.Top + 1e-6).ToList();
        var slope = (within[^1].Y - within[0].Y) / (within[^1].X - within[0].X);
        var cut = drawing.Band.First(point => point.Y <= drawing.Frame.Top + 1e-6);

        Assert.Equal(within[0].Y + (slope * (cut.X - within[0].X)), cut.Y, 1e-6);
    }

    [Theory]
    [InlineData(0, 10, 5, "0 5 10")]
    [InlineData(0, 10, 6, "0 2 4 6 8 10")]
    [InlineData(0.05, 0.34, 3, "0.1 0.2 0.3")]
    [InlineData(-3, 3, 3, "-2 0 2")]
    public void Round_ticks_are_steps_of_one_two_or_five(double from, double to, int most, string expected)
    {
        var ticks = Ticks.Round(from, to, most, x => x.ToString(System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(expected, string.Join(' ', ticks.Select(tick => tick.Label)));
    }

    [Fact]
    public void Round_ticks_are_few_enough_and_lie_between_the_ends() => Gen.Select(
            Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6], Gen.Int[1, 12])
        .Sample((from, span, most) =>
        {
            var ticks = Ticks.Round(from, from + span, most, x => "");
            Assert.True(ticks.Count <= most);
            Assert.All(ticks, tick => Assert.InRange(tick.At, from - (1e-9 * span), from + span + (1e-9 * span)));
        });

    [Theory]
    [InlineData("2022-11-06", "2026-11-25", 5, "2023 2024 2025 2026")]
    [InlineData("2022-11-06", "2026-11-25", 2, "2024 2026")]
    [InlineData("2026-01-01", "2026-07-02", 3, "Jan 2026 Apr 2026 Jul 2026")]
    [InlineData("2026-01-02", "2026-01-20", 3, "")]
    [InlineData("2026-01-02", "2026-11-20", 1, "Jul 2026")]
    public void Calendar_ticks_are_first_days(string from, string to, int most, string expected)
    {
        var ticks = Ticks.Calendar(Day(from), Day(to), most);

        Assert.Equal(expected, string.Join(' ', ticks.Select(tick => tick.Label)));
    }

    private static TrendPicture Picture((double X, double Value)[] points) =>
        new([.. points.Select(point => new TrendMark(point.X, point.Value, 0.2, false))], null, null, null, null);

    private static TrendDrawing Draw(TrendPicture picture) =>
        TrendChart.Draw(picture, 340, 200, Round, x => $"meets at {x}", y => $"{y}");

    private static double Day(string text) =>
        (double)DateTime.Parse(text, System.Globalization.CultureInfo.InvariantCulture).Ticks / TimeSpan.TicksPerDay;
}
