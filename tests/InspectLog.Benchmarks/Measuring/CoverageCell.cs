using InspectLog.Measuring;
using MathNet.Numerics.Distributions;

namespace InspectLog.Benchmarks.Measuring;

/// <summary>One cell of the coverage table.</summary>
/// <param name="Covered">Share of trials in which the usual evaluation held the true value.</param>
/// <param name="ClassicalCovered">The same of the classical one.</param>
/// <param name="AgainstDraws">Mean width against that of draws after JCGM 101:2008.</param>
/// <param name="AgainstClassical">Mean width against that of the classical evaluation.</param>
internal sealed record CoverageCell(double Covered, double ClassicalCovered, double AgainstDraws, double AgainstClassical)
{
    // A meter of ±5 counts: the half-width of its error and of its step, in counts.
    private const double HalfWidth = 5;
    private const double HalfStep = 0.5;
    private const int Draws = 20_000;
    private const int DegreesBefore = 10;

    /// <summary>Simulates a cell.</summary>
    public static CoverageCell Simulate(Random random, int count, double ratio, int trials, int compared)
    {
        var scatter = ratio * double.Hypot(HalfWidth, HalfStep) / Math.Sqrt(3);
        var (held, classicalHeld, width, classicalWidth, ours, drawn) = (0, 0, 0.0, 0.0, 0.0, 0.0);
        for (var trial = 0; trial < trials; trial++)
        {
            // True values far from 0, anywhere between two steps.
            var truth = 1000 + random.NextDouble();
            var reading = Read(random, truth, scatter, count);
            var estimate = Estimate.Of(reading);
            var classical = Estimate.Of(reading, Evaluation.Classical);
            held += Math.Abs(estimate.Value - truth) <= estimate.ExpandedUncertainty ? 1 : 0;
            classicalHeld += Math.Abs(classical.Value - truth) <= classical.ExpandedUncertainty ? 1 : 0;
            width += estimate.ExpandedUncertainty;
            classicalWidth += classical.ExpandedUncertainty;
            if (trial < compared)
            {
                ours += estimate.ExpandedUncertainty;
                drawn += Drawn(random, estimate);
            }
        }

        return new((double)held / trials, (double)classicalHeld / trials, ours / drawn, width / classicalWidth);
    }

    private static DisplayedReading Read(Random random, double truth, double scatter, int count)
    {
        var error = HalfWidth * ((2 * random.NextDouble()) - 1);
        var values = new double[count];
        for (var i = 0; i < count; i++)
        {
            values[i] = Math.Round(truth + error + Normal.Sample(random, 0, scatter));
        }

        return new DisplayedReading(values, new Accuracy(0, HalfWidth), 2 * HalfStep)
        {
            Scatter = count > 1
                ? null
                : new(scatter * Math.Sqrt(ChiSquared.Sample(random, DegreesBefore) / DegreesBefore), DegreesBefore),
        };
    }

    // JCGM 101:2008, 7.7 with the symmetrical interval: the place below which 95.45 % of the sizes of the draws lie.
    private static double Drawn(Random random, in Estimate estimate)
    {
        var sizes = new double[Draws];
        for (var i = 0; i < Draws; i++)
        {
            var sum = 0.0;
            foreach (var part in estimate.Contributions)
            {
                sum += part.Shape == ContributionShape.Student
                    ? part.StandardUncertainty * StudentT.Sample(random, 0, 1, part.DegreesOfFreedom)
                    : part.StandardUncertainty * Math.Sqrt(3) * ((2 * random.NextDouble()) - 1);
            }

            sizes[i] = Math.Abs(sum);
        }

        Array.Sort(sizes);
        return sizes[(int)(Coverage.Probability * Draws)];
    }
}
