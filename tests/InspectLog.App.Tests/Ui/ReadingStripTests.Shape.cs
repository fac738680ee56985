using CsCheck;
using InspectLog.App.Ui.Drawings;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Ui;

/// <content>The shape in which a reading is drawn: that of what is known of it.</content>
public sealed partial class ReadingStripTests
{
    private static StripReading.Known Blurred(double value, double box, double u) =>
        new(value, DensityCurve.Of(Budgeted(box, u, double.PositiveInfinity)));

    private static MeasurandDistribution Budgeted(double box, double scale, double degrees) => MeasurandDistribution.Of(
    [
        new Contribution("accuracy", Budget.Rectangular(box), double.PositiveInfinity) { Shape = ContributionShape.Even },
        new Contribution("repeats", scale, degrees) { Shape = ContributionShape.Student },
    ]);

    private static double Reach(MeasurandDistribution known) => DensityCurve.Of(known)!.HalfWidth;

    private static double Pixels(StripDrawing drawing, double width) => drawing.Axis.At(1 + width) - drawing.Axis.At(1);

    // Of the outline above the axis.
    private static double Area(StripShape shape) => shape.Points.Zip(shape.Points.Skip(1), (one, next) =>
        (next.X - one.X) * (StripDrawing.Baseline - ((one.Y + next.Y) / 2))).Sum();

    // A meter whose accuracy is nearly all: a box of ±0.1 with a little scatter.
    [Fact]
    public void Reading_of_which_only_bounds_are_known_is_a_box_with_soft_shoulders()
    {
        var drawing = Draw(CoilCircuit with { Reading = Blurred(1.2, 0.1, 0.01) });
        var points = Assert.Single(drawing.Spread).Points;
        var top = StripDrawing.Baseline - StripDrawing.SpreadHeight;

        Assert.All(points.Where(point => Math.Abs(point.X - drawing.Axis.At(1.2)) < 0.6 * Pixels(drawing, 0.1)), point => Assert.Equal(top, point.Y, 0.5));
        Assert.Contains(points, point => point.Y > top + 5 && point.Y < StripDrawing.Baseline - 5);
        Assert.InRange(points[^1].X - points[0].X, 2 * Pixels(drawing, 0.1), 2 * Pixels(drawing, 0.14));
    }

    [Fact]
    public void Outline_has_no_more_than_sixty_points_and_a_flat_top_only_its_ends()
    {
        Assert.InRange(Draw(CoilCircuit).Spread.Sum(shape => shape.Points.Count - 2), 40, 61);
        Assert.InRange(Draw(CoilCircuit with { Reading = Blurred(1.2, 0.1, 0.005) }).Spread[0].Points.Count, 8, 24);
        Assert.Equal(4, Draw(CoilCircuit with { Reading = new StripReading.Box(1.1, 1.4) }).Spread[0].Points.Count);
    }

    // What is hatched is as large a part of the outline as the reading is likely to lie outside.
    [Fact]
    public void Hatched_part_is_the_share_outside_the_limits() =>
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0, 0.1], Gen.Int[1, 30], Gen.Double[0, 0.05]).Sample((box, scale, degrees, off) =>
        {
            var known = Budgeted(box, scale, degrees);
            var drawing = Draw(CoilCircuit with { Reading = new StripReading.Known(0.6 + off, DensityCurve.Of(known)) });
            var hatched = drawing.Spread.Where(shape => shape.Outside).Sum(Area) / drawing.Spread.Sum(Area);
            var (all, below) = (1 - (2 * known.Above(Reach(known))), known.Above(off) - known.Above(Reach(known)));
            Assert.Equal(below / all, hatched, 0.01);
        });
}
