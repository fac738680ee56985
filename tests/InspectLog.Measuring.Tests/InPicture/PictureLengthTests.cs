namespace InspectLog.Measuring.Tests;

/// <summary>Lengths measured in pictures of scenes whose size is known, since the test drew them up itself.</summary>
public sealed class PictureLengthTests(ITestOutputHelper output)
{
    private const int Trials = 4000;
    private const double Pick = PictureLength.UsualPick;

    // By hand: 25 mm over 500 px is 0.05 mm a pixel, so 120 px are 6 mm. An end is off along the line by √(1² + 1/12) px, and there are
    // two: √(2·13/12)·0.05 = 0.0736 mm. The same ends of the reference count 6/25 as much, 0.0177 mm, and so does its ±0.05 mm:
    // 6/25·0.05/√3 = 0.0069 mm. Together u = 0.0760 mm.
    [Fact]
    public void Known_length_agrees_with_the_budget_worked_by_hand()
    {
        var estimate = PictureLength.Of(new KnownLength(new(100, 100), new(600, 100), 25, 0.05), new(300, 400), new(420, 400));

        Assert.Equal(6, estimate.Value, 1e-12);
        var ends = Math.Sqrt(2 * 13.0 / 12) * 0.05;
        var u = Math.Sqrt((ends * ends) + (ends * 0.24 * ends * 0.24) + Math.Pow(0.24 * 0.05 / Math.Sqrt(3), 2));
        Assert.Equal(u, estimate.StandardUncertainty, 1e-6);
        Assert.Equal(2 * u, estimate.ExpandedUncertainty, 2e-6);
        Assert.Equal(2, estimate.CoverageFactor, 1e-9);
        Assert.Equal(
            ["picking the ends of what is measured", "pixels of the picture", "picking the ends of the known length", "size of the reference"],
            estimate.Contributions.Select(one => one.Name));
    }

    // A rectangle seen squarely says the same as its scale, whatever it is made of.
    [Fact]
    public void Rectangle_seen_squarely_gives_the_length_by_scale()
    {
        var estimate = PictureLength.Of(Rectangle(new(400), 40, 30, 0), new PicturedPlane(400).Seen(new(-5, 3)), new PicturedPlane(400).Seen(new(7, 8)));

        Assert.Equal(13, estimate.Value, 1e-9);
    }

    [Fact]
    public void Slanted_view_is_corrected_by_the_rectangle_and_not_by_a_length()
    {
        var plane = new PicturedPlane(300, Tilt: 0.8, Turn: 0.3);
        var (from, to) = (plane.Seen(new(0, -18)), plane.Seen(new(0, 18)));

        Assert.Equal(36, PictureLength.Of(Rectangle(plane, 40, 30, 0), from, to).Value, 1e-6);
        var flat = PictureLength.Of(new KnownLength(plane.Seen(new(-20, 0)), plane.Seen(new(20, 0)), 40, 0), from, to);
        Assert.True(Math.Abs(flat.Value - 36) > flat.ExpandedUncertainty, "a slant of 46 degrees would have gone unseen");
    }

    /// <summary>How often the true length lies within ±U: 95.45 of 100 by JCGM 100:2008, G.3. The bounds are three standard
    /// deviations of the binomial beyond 95 and 97 of 100, so that one cannot be met by making U larger.</summary>
    [Fact]
    public void True_length_lies_within_U_as_often_as_it_says_where_all_lies_flat()
    {
        var draws = new Draws(20261201);
        Covers("flat", () =>
        {
            var plane = new PicturedPlane(draws.Between(150, 500), Turn: draws.Between(-3, 3));
            var (nominal, tolerance) = (draws.Between(15, 60), draws.Between(0, 0.3));
            var start = draws.Place(30);
            var end = draws.From(start, nominal + draws.Between(-tolerance, tolerance));
            var reference = new KnownLength(Seen(draws, plane, start), Seen(draws, plane, end), nominal, tolerance);
            return (plane, reference);
        }, draws);
    }

    [Fact]
    public void True_length_lies_within_U_as_often_as_it_says_on_a_slanted_plane()
    {
        var draws = new Draws(20261202);
        Covers("slanted", () =>
        {
            var plane = new PicturedPlane(draws.Between(180, 450), draws.Between(-0.9, 0.9), draws.Between(-3, 3));
            var (first, second, tolerance) = (draws.Between(25, 70), draws.Between(20, 60), draws.Between(0, 0.2));
            var (width, height) = ((first + draws.Between(-tolerance, tolerance)) / 2, (second + draws.Between(-tolerance, tolerance)) / 2);
            PicturePoint[] corners = [new(-width, -height), new(width, -height), new(width, height), new(-width, height)];
            return (plane, new KnownRectangle([.. corners.Select(corner => Seen(draws, plane, corner))], first, second, tolerance));
        }, draws);
    }

    public static TheoryData<string, PictureReference, PicturePoint> Unusable => new()
    {
        { "too short in the picture. Take", new KnownLength(new(0, 0), new(15, 0), 10, 0), new(300, 300) },
        { "its ends could be one point", new KnownLength(new(0, 0), new(200, 0), 10, 0), new(5, 0) },
        { "above 0", new KnownLength(new(0, 0), new(200, 0), 0, 0), new(300, 300) },
        { "more than half of itself", new KnownLength(new(0, 0), new(200, 0), 10, 6), new(300, 300) },
        { "one after the other round it", new KnownRectangle([new(0, 0), new(100, 100), new(100, 0), new(0, 100)], 10, 10, 0), new(300, 300) },
        { "is not seen", new KnownRectangle([new(0, 0), new(400, 0), new(200, 150), new(0, 150)], 10, 10, 0), new(0, 400) },
    };

    [Theory]
    [MemberData(nameof(Unusable), DisableDiscoveryEnumeration = true)]
    public void What_cannot_be_measured_by_is_refused_with_what_to_do(string says, PictureReference reference, PicturePoint to) =>
        Assert.Contains(says, Assert.Throws<ArgumentException>(() => PictureLength.Of(reference, new(0, 0), to)).Message, StringComparison.Ordinal);

    private void Covers(string name, Func<(PicturedPlane Plane, PictureReference Reference)> scene, Draws draws)
    {
        var (held, refused) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var (plane, reference) = scene();
            var length = draws.Between(3, 50);
            var start = draws.Place(25);
            try
            {
                var estimate = PictureLength.Of(reference, Seen(draws, plane, start), Seen(draws, plane, draws.From(start, length)), Pick);
                held += Math.Abs(estimate.Value - length) <= estimate.ExpandedUncertainty ? 1 : 0;
            }
            catch (ArgumentException)
            {
                refused++;
            }
        }

        var taken = Trials - refused;
        output.WriteLine($"{name}: {held} of {taken} within ±U ({100.0 * held / taken:0.00} of 100); {refused} refused");
        Assert.True(refused < Trials / 50, $"{refused} refused");
        Assert.InRange(held, Bound(taken, 0.95, -3), Bound(taken, 0.97, 3));
    }

    private static double Bound(int count, double share, double deviations) =>
        (count * share) + (deviations * Math.Sqrt(count * share * (1 - share)));

    private static PicturePoint Seen(Draws draws, PicturedPlane plane, PicturePoint onPlane) => draws.Picked(plane.Seen(onPlane), Pick);

    private static KnownRectangle Rectangle(PicturedPlane plane, double first, double second, double tolerance) => new(
        [.. new PicturePoint[] { new(-first / 2, -second / 2), new(first / 2, -second / 2), new(first / 2, second / 2), new(-first / 2, second / 2) }.Select(plane.Seen)],
        first, second, tolerance);
}
