using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace InspectLog.Measuring.Tests;

/// <summary>Two t added up, against sums that are known and against an integral done another way.</summary>
public class StudentPairTests
{
    private static MeasurandDistribution Pair(double one, int ofOne, double two, int ofTwo) => MeasurandDistribution.Of(
    [
        new Contribution("repeats", one, ofOne) { Shape = ContributionShape.Student },
        new Contribution("leads", two, ofTwo) { Shape = ContributionShape.Student },
    ]);

    // Two Cauchy distributions add up to one whose scale is the sum of theirs.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 0.01)]
    [InlineData(0.3, 1)]
    [InlineData(1e-120, 1e-121)]
    public void Two_of_one_degree_of_freedom_are_one_of_the_sum_of_their_scales(double one, double two)
    {
        var sum = Pair(one, 1, two, 1);
        foreach (var times in new[] { 0, 0.1, 1, 10, 1000 })
        {
            var x = times * (one + two);
            Close.ToDigits(Math.Atan2(one + two, x) / Math.PI, sum.Above(x), 8);
        }
    }

    // The integral of the one's density times the other's tail, by Gauss and Legendre in panels.
    [Theory]
    [InlineData(1, 2, 0.4, 1)]
    [InlineData(1, 3, 1, 4)]
    [InlineData(0.2, 9, 1, 9)]
    [InlineData(1, 1, 0.5, 30)]
    [InlineData(0.01, 36, 1, 2)]
    public void Tail_agrees_with_the_integral_over_one_of_them(double one, int ofOne, double two, int ofTwo)
    {
        var sum = Pair(one, ofOne, two, ofTwo);
        foreach (var x in new[] { 0.0, 0.5, 2, 5, 20 })
        {
            Assert.Equal(Integral(x), sum.Above(x), 2e-8);
        }

        double Integral(double x)
        {
            const int Panels = 4000;
            var total = 0.0;
            for (var i = 0; i < Panels; i++)
            {
                // s = tan(θ) takes all of the line; both are smooth in θ.
                var (from, to) = (Math.PI * (((double)i / Panels) - 0.5), Math.PI * (((double)(i + 1) / Panels) - 0.5));
                total += GaussLegendreRule.Integrate(
                    angle =>
                    {
                        var s = Math.Tan(angle);
                        return (1 + (s * s)) * StudentT.PDF(0, one, ofOne, s) * StudentT.CDF(0, two, ofTwo, s - x);
                    },
                    from, to, 8);
            }

            return total;
        }
    }

    // On either side of the number of degrees from which the one sum is done in the other.
    [Fact]
    public void Both_ways_of_adding_up_join_without_a_jump()
    {
        var (before, after) = (Pair(1, 4, 1, 36), Pair(1, 4, 1, 37));

        Assert.InRange(after.HalfWidthOf(0.9545) / before.HalfWidthOf(0.9545), 0.9995, 1);
        Assert.Equal(before.Above(3), after.Above(3), 2e-4);
    }
}
