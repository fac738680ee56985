namespace InspectLog.Measuring.Tests;

public class FeelerBladesTests
{
    [Fact]
    public void Stack_is_as_thick_as_its_blades_together()
    {
        var bracket = FeelerBlades.Bracket([new(0.25, 0.003), new(0.10, 0.002)], [new(0.40, 0.004)]);

        Close.ToDigits(0.35, bracket.Goes, 14);
        Assert.Equal(0.40, bracket.Stops);
        // (0.003² + 0.002² + 0.004²)/3 for the rectangles, and a third of that for the place.
        Close.ToDigits(Math.Sqrt(29e-6 / 9), bracket.GaugeUncertainty.GetValueOrDefault(), 12);
    }

    [Fact]
    public void Blade_in_both_stacks_counts_as_one()
    {
        Blade common = new(0.25, 0.003);
        var bracket = FeelerBlades.Bracket([common, new(0.05, 0)], [common, new(0.10, 0)]);

        // v + v + c over 3, with all three the variance of the one blade.
        Close.ToDigits(0.003 / Math.Sqrt(3), bracket.GaugeUncertainty.GetValueOrDefault(), 12);
    }

    [Fact]
    public void Blade_in_both_stacks_cannot_make_them_overlap()
    {
        Blade common = new(0.25, 0.02);
        var bracket = FeelerBlades.Bracket([common, new(0.05, 0.001)], [common, new(0.06, 0.001)]);

        Close.ToDigits(0.01, bracket.Stops - bracket.Goes, 9);
    }

    // Between the shares of a trapezoid with slopes, by hand: on the slope of a triangle of half-base 1, (1 − x)²/2 lies
    // beyond x; tiny tails keep their digits on either side.
    [Fact]
    public void Trapezoid_shares_keep_their_digits()
    {
        var triangle = new Trapezoid(1, 0);

        Close.ToDigits(0.32 - 0.08, triangle.Between(0.2, 0.6), 12);
        Close.ToDigits(0.32 - 0.08, triangle.Between(-0.6, -0.2), 12);
        Close.ToDigits(0.64 - 0.0, triangle.Between(-0.4, 0.4), 12);
        Close.ToDigits(Math.Pow(2, -61), triangle.Between(1 - Math.Pow(2, -30), 1), 12);
        Close.ToDigits(Math.Pow(2, -61), triangle.Between(-1, -1 + Math.Pow(2, -30)), 12);
    }

    [Fact]
    public void Exact_blades_make_an_exact_bracket() =>
        Assert.Equal(
            ConformityRule.Decide(new Bracket(0.25, 0.35), Limits.Of(0.2, 0.31)).ProbabilityOfConformity,
            ConformityRule.Decide(
                FeelerBlades.Bracket([new(0.25, 0)], [new(0.35, 0)]), Limits.Of(0.2, 0.31)).ProbabilityOfConformity,
            1e-12);

    // Four million draws of a gap between two blades, each rectangular within its tolerance: share below the limit, and
    // half-width of the middle 95.45 %. The closed form stands in for the exact shape to within half a hundredth while
    // tolerances are a fifth of the step, and a hundredth and a half when they are nearly half of it.
    [Theory]
    [InlineData(0.005, 0.34, 0.80218575, 0.02508439473501506, 0.005)]
    [InlineData(0.005, 0.349, 0.965905, 0.02509572109584729, 0.005)]
    [InlineData(0.005, 0.3515, 0.9885935, 0.025087730627146365, 0.005)]
    [InlineData(0.02, 0.34, 0.80111425, 0.03417405259759726, 0.015)]
    [InlineData(0.02, 0.3515, 0.9301105, 0.03420680741220783, 0.015)]
    public void Blade_tolerance_agrees_with_a_simulation(
        double tolerance, double upper, double probability, double expanded, double within)
    {
        var bracket = FeelerBlades.Bracket([new(0.30, tolerance)], [new(0.35, tolerance)]);
        var conformity = ConformityRule.Decide(bracket, Limits.Of(null, upper));

        Assert.Equal(probability, conformity.ProbabilityOfConformity, within);
        Assert.InRange(conformity.ExpandedUncertainty / expanded, 0.95, 1.05);
    }

    // EA-4/02 S10.13 (M): β = 0.33 gives k = 1.83 for 95 %; the formula gives 1.8351.
    [Fact]
    public void Trapezoid_agrees_with_EA_4_02()
    {
        var trapezoid = new Trapezoid(1, 0.33);

        Close.ToDecimals(1.8351, trapezoid.HalfWidthOf(0.95) / trapezoid.StandardDeviation, 4);
    }

    // EA-4/02 S9 (M): a voltmeter's step of ±0.05 V and a source's ±0.011 V, both rectangular: U = 0.05 V at 95 %.
    [Fact]
    public void Two_boxes_agree_with_EA_4_02()
    {
        var trapezoid = Trapezoid.OfBoxes(0.05, 0.011);

        Close.ToDecimals(0.05, trapezoid.HalfWidthOf(0.95), 2);
        Close.ToDecimals(0.030, double.Hypot(trapezoid.StandardDeviation, 0.001), 3);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1, 0.4)]
    [InlineData(1, 1)]
    [InlineData(0.3, 0.7)]
    public void Trapezoid_covers_what_it_says(double one, double other)
    {
        var trapezoid = Trapezoid.OfBoxes(one, other);

        for (var coverage = 0.0; coverage <= 1; coverage += 0.05)
        {
            var half = trapezoid.HalfWidthOf(coverage);
            Assert.Equal(coverage, trapezoid.Between(-half, half), 1e-12);
            Assert.Equal((1 - coverage) / 2, trapezoid.Above(half), 1e-12);
        }

        Close.ToDigits(((one * one) + (other * other)) / 3, trapezoid.StandardDeviation * trapezoid.StandardDeviation, 12);
        Assert.Equal(0, trapezoid.Above(2));
        Assert.Equal(1, trapezoid.Above(-2));
    }

    public static TheoryData<Blade[], Blade[], string> Unusable => new()
    {
        { [], [new(0.4, 0)], "at least one blade" },
        { [new(0.3, 0)], [], "at least one blade" },
        { [new(0, 0)], [new(0.4, 0)], "above 0" },
        { [new(double.PositiveInfinity, 0)], [new(0.4, 0)], "above 0" },
        { [new(0.3, -0.1)], [new(0.4, 0)], "0 or more" },
        { [new(0.3, 0.3)], [new(0.4, 0)], "less than its size" },
        { [new(0.3, double.NaN)], [new(0.4, 0)], "0 or more" },
        { [new(0.4, 0)], [new(0.3, 0)], "larger than" },
        { [new(0.30, 0.03)], [new(0.35, 0.02)], "overlap" },
        { [new(1, 0.5)], [new(2, 0.5)], "overlap" },
        { [new(0.1, 0), new(-0.1, 0)], [new(0.4, 0)], "above 0" },
        { [new(0.1, 0), new(0.1, 0.2)], [new(0.4, 0)], "less than its size" },
    };

    [Theory]
    [MemberData(nameof(Unusable))]
    public void Unusable_blades_are_refused_with_the_reason(Blade[] goes, Blade[] stops, string reason) =>
        Assert.Contains(
            reason,
            Assert.Throws<ArgumentException>(() => FeelerBlades.Bracket(goes, stops)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Gauge_uncertainty_out_of_range_is_refused(double uncertainty) =>
        Assert.Contains(
            "gauges must be 0 or more",
            Assert.Throws<ArgumentException>(
                () => Estimate.Of(new Bracket(0.25, 0.35) { GaugeUncertainty = uncertainty })).Message,
            StringComparison.Ordinal);
}
