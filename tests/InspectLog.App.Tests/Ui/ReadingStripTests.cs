using System.Globalization;
using CsCheck;
using InspectLog.App.Ui.Drawings;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Ui;

/// <summary>Geometry of the reading strip.</summary>
public sealed partial class ReadingStripTests
{
    private static readonly StripFacts CoilCircuit =
        new(0.6, 2.0, null, Bell(0.65, 0.05), null, "Ω");

    private static StripReading.Known Bell(double value, double u) =>
        new(value, DensityCurve.Of(MeasurandDistribution.Student(u, double.PositiveInfinity)));

    private static StripDrawing Draw(StripFacts facts, double width = ReadingStrip.Wide) =>
        ReadingStrip.Draw(facts, width, value => $"{value.ToString("0.##", CultureInfo.InvariantCulture)} {facts.Unit}");

    [Fact]
    public void Span_lies_between_the_limits()
    {
        var drawing = Draw(CoilCircuit);

        Assert.Equal(drawing.Axis.At(0.6), drawing.Span!.From, 6);
        Assert.Equal(drawing.Axis.At(2.0), drawing.Span.To, 6);
        Assert.Equal([drawing.Span.From, drawing.Span.To], drawing.Span.Ticks);
    }

    [Fact]
    public void Drop_line_stands_at_the_reading()
    {
        var drawing = Draw(CoilCircuit);

        Assert.Equal(0, drawing.Drop!.Value.Beyond);
        Assert.Equal(drawing.Axis.At(0.65), drawing.Drop.Value.At, 6);
    }

    [Fact]
    public void Bell_is_cut_at_the_limit_and_its_outer_part_hatched()
    {
        var drawing = Draw(CoilCircuit);
        var limit = drawing.Axis.At(0.6);

        Assert.Equal([true, false], drawing.Spread.Select(shape => shape.Outside));
        Assert.Equal(limit, drawing.Spread[0].Points[^1].X, 6);
        Assert.Equal(limit, drawing.Spread[1].Points[0].X, 6);
        Assert.NotEmpty(drawing.Hatch);
        Assert.All(drawing.Hatch, line => Assert.True(line.From.X <= limit + 1e-9 && line.To.X <= limit + 1e-9));
    }

    [Fact]
    public void Bell_is_highest_at_the_reading_and_falls_to_the_height_of_the_normal_curve()
    {
        var bell = Bell(10, 2);

        Assert.Equal(1, bell.HeightAt(10), 9);

        // Ratio of the normal density one standard deviation out to its peak: exp(-1/2), any table of the distribution. Between
        // its thirty places a side the drawing is straight.
        Assert.Equal(0.60653, bell.HeightAt(12), 0.002);
        Assert.Equal(0.60653, bell.HeightAt(8), 0.002);
    }

    [Fact]
    public void Reading_well_inside_has_nothing_hatched()
    {
        var drawing = Draw(CoilCircuit with { Reading = Bell(1.2, 0.05) });

        Assert.False(Assert.Single(drawing.Spread).Outside);
        Assert.Empty(drawing.Hatch);
    }

    [Fact]
    public void Bracket_across_a_limit_is_a_box_in_two_parts_of_one_height()
    {
        var drawing = Draw(new(0.2, 0.4, 0.3, new StripReading.Box(0.35, 0.45), null, "mm"));

        Assert.Equal([false, true], drawing.Spread.Select(shape => shape.Outside));
        var tops = drawing.Spread.SelectMany(shape => shape.Points).Select(point => point.Y).Distinct().ToList();
        Assert.Equal(2, tops.Count);
        Assert.Equal(drawing.Axis.At(0.3), drawing.Notch!.Value, 6);
    }

    [Fact]
    public void Reading_without_uncertainty_is_a_line_alone()
    {
        var drawing = Draw(CoilCircuit with { Reading = Bell(1.2, 0) });

        Assert.Empty(drawing.Spread);
        Assert.NotNull(drawing.Drop);
    }

    [Fact]
    public void No_reading_shows_the_span_alone()
    {
        var drawing = Draw(CoilCircuit with { Reading = null });

        Assert.Null(drawing.Drop);
        Assert.Empty(drawing.Spread);
        Assert.NotNull(drawing.Span);
    }

    [Fact]
    public void Lone_upper_limit_leaves_the_span_open_to_the_left()
    {
        var drawing = Draw(new(null, 22, null, Bell(9.4, 0.2), null, "kΩ"));

        Assert.True(drawing.Span!.IsOpenToTheLeft);
        Assert.False(drawing.Span.IsOpenToTheRight);
        Assert.Equal(drawing.Axis.Left, drawing.Span.From, 6);
        Assert.Single(drawing.Span.Ticks);
        Assert.Equal("22 kΩ", Assert.Single(drawing.Labels).Text);
    }

    [Fact]
    public void Reading_far_beyond_the_limits_is_drawn_at_the_edge_with_its_side()
    {
        var drawing = Draw(CoilCircuit with { Reading = Bell(900, 10) });

        Assert.Equal(1, drawing.Drop!.Value.Beyond);
        Assert.Equal(drawing.Axis.Right, drawing.Drop.Value.At, 6);
        Assert.True(drawing.Span!.To - drawing.Span.From > ReadingStrip.Wide / 2);
        Assert.Empty(drawing.Spread);
    }

    [Fact]
    public void No_limits_and_no_reading_still_gives_an_axis()
    {
        var drawing = Draw(new(null, null, null, null, null, "°"));

        Assert.True(drawing.Axis.To > drawing.Axis.From);
        Assert.Null(drawing.Span);
    }

    [Fact]
    public void Without_limits_the_reading_itself_is_labelled()
    {
        var drawing = Draw(new(null, null, null, Bell(12, 1), null, "°"));

        Assert.Equal("12 °", Assert.Single(drawing.Labels).Text);
    }

    [Theory]
    [InlineData(ReadingStrip.Small)]
    [InlineData(ReadingStrip.Narrow)]
    [InlineData(ReadingStrip.Wide)]
    public void Nothing_leaves_the_drawing_and_no_labels_meet(double width)
    {
        var limit = Gen.Double[0, 100].Nullable();
        var reading = Gen.OneOf(
            Gen.Select(Gen.Double[-50, 300], Gen.Double[0, 40], (v, u) => (StripReading?)Bell(v, u)),
            Gen.Select(Gen.Double[-50, 300], Gen.Double[0.01, 40], (v, w) => (StripReading?)new StripReading.Box(v, v + w)),
            Gen.Const((StripReading?)null));
        Gen.Select(limit, limit, Gen.Double[0, 100].Nullable(), reading, Gen.Double[0, 100].Nullable())
            .Where((a, b, _, _, _) => a is null || b is null || a < b)
            .Select((a, b, nominal, read, previous) => new StripFacts(a, b, nominal, read, previous, "kΩ"))
            .Sample(facts => Holds(Draw(facts, width), width));
    }

    private static void Holds(StripDrawing drawing, double width)
    {
        var points = drawing.Spread.SelectMany(shape => shape.Points)
            .Concat(drawing.Hatch.SelectMany(line => new[] { line.From, line.To }));
        Assert.All(points, point =>
        {
            Assert.InRange(point.X, 0, width);
            Assert.InRange(point.Y, 0, StripDrawing.Baseline + 1e-9);
        });
        if (drawing.Drop is { } drop)
        {
            Assert.InRange(drop.At, 0, width);
        }

        // At 14 px a character is at most 9 px wide; the drawing is placed by the same figure.
        var labels = drawing.Labels.Select(label =>
        {
            var length = label.Text.Length * 9.0;
            var from = label.Anchor switch { "start" => label.At, "end" => label.At - length, _ => label.At - (length / 2) };
            return (From: from, To: from + length);
        }).OrderBy(label => label.From).ToList();
        Assert.All(labels, label => Assert.True(label.From >= -1e-6 && label.To <= width + 1e-6));
        Assert.All(labels.Zip(labels.Skip(1)), pair => Assert.True(pair.First.To <= pair.Second.From + 1e-6));
    }
}
