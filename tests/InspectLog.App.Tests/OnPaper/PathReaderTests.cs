using InspectLog.Paper.Blocks;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>Paths as SVG writes them. The arcs are the examples of W3C SVG 1.1, 8.3.8, and points of circles.</summary>
public sealed class PathReaderTests
{
    [Theory]
    [InlineData("M3 3l10 10M13 3L3 13", "M3,3 L13,13 M13,3 L3,13")]
    [InlineData("M0 5H7v2h-1z", "M0,5 L7,5 L7,7 L6,7 Z")]
    [InlineData("m1 1 2 0 0 2z", "M1,1 L3,1 L3,3 Z")] // further pairs after a move are lines
    [InlineData("M1-2.5L.5.25", "M1,-2.5 L0.5,0.25")] // a sign or a second point begins the next number
    public void Moves_and_lines_are_read_absolute_and_relative(string path, string expected) =>
        Assert.Equal(expected, string.Join(' ', PathReader.Read(path).Select(Written)));

    [Fact]
    public void Half_circle_ends_where_it_says_and_stays_at_its_radius()
    {
        var steps = PathReader.Read("M8 2a6 6 0 0 0 0 12z");

        var curves = steps.OfType<Step.Curve>().ToList();
        Assert.Equal(2, curves.Count);
        Assert.Equal(2, curves[0].To.X, 9); // the left half: its middle is the leftmost point
        Assert.Equal(8, curves[0].To.Y, 9);
        Assert.Equal((8, 14), (Math.Round(curves[1].To.X, 9), Math.Round(curves[1].To.Y, 9)));
        var at = Middle(new(8, 2), curves[0]);
        Assert.Equal(6, Math.Sqrt((at.X - 8) * (at.X - 8) + (at.Y - 8) * (at.Y - 8)), 2);
    }

    [Theory]
    [InlineData("M275,175 v-150 a150,150 0 0,0 -150,150 z", 1)] // the quarter of the specification's pie
    [InlineData("M300,200 h-150 a150,150 0 1,0 150,-150 z", 3)] // and the rest of it
    public void Arcs_of_the_specification_have_as_many_quarters_as_they_show(string path, int quarters) =>
        Assert.Equal(quarters, PathReader.Read(path).OfType<Step.Curve>().Count());

    [Theory]
    [InlineData("M")]
    [InlineData("M1 2Q3 4 5 6")]
    [InlineData("M0 0a1 1 0 2 0 1 1")]
    [InlineData("hello")]
    public void Anything_else_is_refused(string path) => Assert.Throws<FormatException>(() => PathReader.Read(path));

    private static Spot Middle(Spot from, Step.Curve curve) => new(
        (from.X + 3 * curve.First.X + 3 * curve.Second.X + curve.To.X) / 8, (from.Y + 3 * curve.First.Y + 3 * curve.Second.Y + curve.To.Y) / 8);

    private static string Written(Step step) => step switch
    {
        Step.Move(var to) => FormattableString.Invariant($"M{to.X},{to.Y}"),
        Step.Line(var to) => FormattableString.Invariant($"L{to.X},{to.Y}"),
        _ => "Z",
    };
}
