using System.Globalization;
using CsCheck;
using InspectLog.App.Ui.Drawings;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Ui;

/// <summary>A journal can hold any finite number. Drawings and words are made of it all the same, and every position lies
/// in the drawing.</summary>
public sealed class ExtremeNumberTests
{
    private static readonly double[] Extremes =
    [
        0, double.Epsilon, 1e-308, 1e-30, 1e-16, 0.3, 1, 12.4, 9_400, 1e15, 1e16, 7.9e27, 7.9228162514264e28, 8e28, 1e29,
        1e32, 1e99, 1e150, 1e154, 1e155, 1e299, 1e300, 1e301, double.MaxValue,
    ];

    private static readonly Gen<double> Any = Gen.OneOf(
        Gen.Select(Gen.Int[0, Extremes.Length - 1], Gen.Bool, (index, minus) => minus ? -Extremes[index] : Extremes[index]),
        Gen.Double);

    private static readonly Gen<double> Size = Any.Select(Math.Abs);

    [Fact]
    public void Strip_of_any_numbers_is_drawn_within_its_edges()
    {
        var reading = Gen.OneOf(
            Gen.Select(Any, Size, (value, u) => (StripReading?)new StripReading.Known(
                value, DensityCurve.Of(MeasurandDistribution.Student(u, double.PositiveInfinity)))),
            Gen.Select(Any, Any, (one, other) => (StripReading?)new StripReading.Box(Math.Min(one, other), Math.Max(one, other))),
            Gen.Const((StripReading?)null));
        Gen.Select(Any.Nullable(), Any.Nullable(), Any.Nullable(), reading, Any.Nullable())
            .Select((lower, upper, nominal, read, previous) => new StripFacts(
                lower is { } l && upper is { } u ? Math.Min(l, u) : lower,
                lower is { } m && upper is { } v ? Math.Max(m, v) : upper,
                nominal, read, previous, "Ω"))
            .Sample(
                facts =>
                {
                    var drawing = ReadingStrip.Draw(facts, ReadingStrip.Narrow, value => Printed.Value(value, Units.Ohm));
                    Assert.True(drawing.Axis.To > drawing.Axis.From);
                    double?[] positions =
                    [
                        drawing.Span?.From, drawing.Span?.To, drawing.Notch, drawing.Previous, drawing.Drop?.At,
                        .. drawing.Spread.SelectMany(shape => shape.Points).SelectMany(point => new double?[] { point.X, point.Y }),
                        .. drawing.Labels.Select(label => (double?)label.At),
                    ];
                    Assert.All(positions.OfType<double>(), at => Assert.InRange(at, 0, ReadingStrip.Narrow));
                },
                iter: 20_000);
    }

    [Fact]
    public void Trend_of_any_numbers_is_drawn_within_its_edges()
    {
        var mark = Gen.Select(Any, Any, Size, Gen.Bool, (x, value, spread, hollow) => new TrendMark(x, value, spread, hollow));
        var line = Gen.Select(Any, Any, Size, (slope, at, half) =>
            (Func<double, (double, double)>?)(x => (at + (slope * x), half)));
        Gen.Select(
                mark.List[1, 5], Any.Nullable(), Any.Nullable(),
                Gen.OneOf(line, Gen.Const((Func<double, (double, double)>?)null)), Gen.Select(Any, Any).Nullable(), Gen.Bool)
            .Sample(
                (marks, lower, upper, through, meets, byDate) =>
                {
                    var drawing = TrendChart.Draw(
                        new TrendPicture(marks, lower, upper, through, meets),
                        360,
                        200,
                        (from, to, most) => byDate
                            ? Ticks.Calendar(from, to, most)
                            : Ticks.Round(from, to, most, x => x.ToString("#,0", CultureInfo.InvariantCulture)),
                        x => Ticks.DayOf(x).ToString("MMM yyyy", CultureInfo.InvariantCulture),
                        value => Printed.Value(value, Units.Ohm));
                    double?[] positions =
                    [
                        drawing.Allowed?.Top, drawing.Allowed?.Bottom, drawing.Meets?.X, drawing.Meets?.Y, .. drawing.Limits,
                        .. drawing.Band.Concat(drawing.Line).SelectMany(point => new double?[] { point.X, point.Y }),
                        .. drawing.Bars.SelectMany(bar => new double?[] { bar.X, bar.Y, bar.Top, bar.Bottom }),
                        .. drawing.Below.Concat(drawing.Beside).Select(label => (double?)label.At),
                    ];
                    Assert.All(positions.OfType<double>(), at => Assert.True(double.IsFinite(at)));
                    Assert.All(drawing.Bars, bar => Assert.InRange(bar.Y, drawing.Frame.Top, drawing.Frame.Bottom));
                },
                iter: 20_000);
    }

    [Fact]
    public void Round_places_lie_between_the_ends_and_are_no_more_than_asked_for()
    {
        Gen.Select(Any, Any, Gen.Int[1, 12]).Where(one => one.Item1 != one.Item2).Sample(
            (one, other, most) =>
            {
                var (from, to) = (Math.Min(one, other), Math.Max(one, other));
                var ticks = Ticks.Round(from, to, most, value => Printed.Value(value, Units.Volt));
                Assert.True(ticks.Count <= most);
                var slack = 1e-9 * Math.Max(Math.Abs(from), Math.Abs(to));
                Assert.All(ticks, tick => Assert.InRange(tick.At, from - slack, to + slack));
            },
            iter: 20_000);
    }

    [Fact]
    public void Any_numbers_are_printed()
    {
        Gen.Select(Any, Size, Any, Gen.Int[0, Units.All.Count - 1]).Sample(
            (value, spread, other, index) =>
            {
                var unit = Units.All.ElementAt(index);
                string[] texts = [Printed.Value(value, unit), Printed.Uncertain(value, spread, unit), Printed.Span(value, other, unit)];
                Assert.All(texts, text => Assert.EndsWith(unit.Symbol, text, StringComparison.Ordinal));
            },
            iter: 20_000);
    }
}
