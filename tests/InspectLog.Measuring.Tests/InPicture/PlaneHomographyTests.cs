using MathNet.Numerics.LinearAlgebra;

namespace InspectLog.Measuring.Tests;

/// <summary>Plane and picture: a case worked by hand, a pinhole camera, and another way to solve the same equations.</summary>
public sealed class PlaneHomographyTests
{
    private static readonly PicturePoint[] Square = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];

    // By hand: x = 4u/(1 + v), y = 3v/(1 + v) takes the unit square to the trapezium (0, 0), (4, 0), (2, 1.5), (0, 1.5); turned
    // round it is v = y/(3 − y), u = x(1 + v)/4. At (1, 1): v = 1/2, u = 3/8.
    [Fact]
    public void Trapezium_agrees_with_the_case_worked_by_hand()
    {
        var seen = PlaneHomography.Of([new(0, 0), new(4, 0), new(2, 1.5), new(0, 1.5)], Square)!;

        var at = seen.OnPlane(new(1, 1))!.Value;

        Assert.Equal(0.375, at.X, 1e-12);
        Assert.Equal(0.5, at.Y, 1e-12);
        Assert.Null(seen.OnPlane(new(0, 3))); // v = y/(3 − y): the horizon is y = 3
        Assert.Null(seen.OnPlane(new(0, 4)));
    }

    [Fact]
    public void Points_of_a_pictured_plane_come_back_to_where_they_were()
    {
        var draws = new Draws(1);
        for (var trial = 0; trial < 200; trial++)
        {
            var plane = new PicturedPlane(draws.Between(150, 600), draws.Between(-1, 1), draws.Between(-3, 3));
            PicturePoint[] corners = [new(-30, -20), new(30, -20), new(30, 20), new(-30, 20)];
            var seen = PlaneHomography.Of([.. corners.Select(plane.Seen)], corners)!;

            var place = draws.Place(60);

            Assert.True(seen.OnPlane(plane.Seen(place))!.Value.DistanceTo(place) < 1e-8, $"{plane}: {place}");
        }
    }

    // The null space of the eight equations in nine unknowns by singular values (MathNet.Numerics): other equations, since
    // nothing is set to 1, and another solver.
    [Fact]
    public void Agrees_with_the_null_space_by_singular_values()
    {
        var draws = new Draws(2);
        for (var trial = 0; trial < 200; trial++)
        {
            PicturePoint[] picture = [draws.Place(200), draws.Place(200), draws.Place(200), draws.Place(200)];
            PicturePoint[] shifted = [new(-300 + picture[0].X, -300 + picture[0].Y), new(300 + picture[1].X, -300 + picture[1].Y), new(300 + picture[2].X, 300 + picture[2].Y), new(-300 + picture[3].X, 300 + picture[3].Y)];
            PicturePoint[] plane = [new(0, 0), new(draws.Between(5, 90), 0), new(draws.Between(40, 90), draws.Between(40, 90)), new(0, draws.Between(5, 90))];
            var at = draws.Place(250);
            if (PlaneHomography.Of(shifted, plane)?.OnPlane(at) is { } ours)
            {
                var theirs = BySingularValues(shifted, plane, at);
                Assert.True(ours.DistanceTo(theirs) < 1e-6 * (1 + theirs.DistanceTo(default)), $"{trial}: {ours}, {theirs}");
            }
        }
    }

    [Fact]
    public void Three_points_in_a_line_fix_nothing()
    {
        Assert.Null(PlaneHomography.Of([new(0, 0), new(100, 0), new(200, 0), new(0, 100)], Square));
        Assert.Throws<ArgumentException>(() => PlaneHomography.Of([new(0, 0)], Square));
    }

    private static PicturePoint BySingularValues(PicturePoint[] picture, PicturePoint[] plane, PicturePoint at)
    {
        // In hundreds of pixels, so that the columns are of a size.
        var rows = picture.Zip(plane).SelectMany(pair =>
        {
            var (x, y) = (pair.First.X / 100, pair.First.Y / 100);
            return new[]
            {
                new[] { -x, -y, -1, 0, 0, 0, x * pair.Second.X, y * pair.Second.X, pair.Second.X },
                [0, 0, 0, -x, -y, -1, x * pair.Second.Y, y * pair.Second.Y, pair.Second.Y],
            };
        });
        var h = Matrix<double>.Build.DenseOfRowArrays(rows).Svd().VT.Row(8);
        var (u, v) = (at.X / 100, at.Y / 100);
        var depth = (h[6] * u) + (h[7] * v) + h[8];
        return new(((h[0] * u) + (h[1] * v) + h[2]) / depth, ((h[3] * u) + (h[4] * v) + h[5]) / depth);
    }
}
