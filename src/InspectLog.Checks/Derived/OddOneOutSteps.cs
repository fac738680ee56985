using InspectLog.Measuring;

namespace InspectLog.Checks.Derived;

/// <summary>The working of <see cref="OddOneOut"/>.</summary>
internal static class OddOneOutSteps
{
    public static IEnumerable<Step> OfGrubbs(CylinderSpread spread, CylinderValue farthest, GrubbsResult? grubbs)
    {
        if (grubbs is not { } result)
        {
            yield break;
        }

        var sample = Sample.Of([.. spread.Values.Select(value => value.Value)]);
        yield return new(
            "distance from the mean ÷ standard deviation",
            [
                Value(farthest, spread),
                new("Mean", sample.Mean, spread.Unit),
                new("Standard deviation", sample.StandardDeviation, spread.Unit),
            ],
            new("Grubbs' G", result.Statistic, ""));
        yield return new(
            "G that like values exceed in 5 of 100 sets",
            [new("Values", sample.Count, "")],
            new("Critical G", result.Critical, ""));
    }

    public static IEnumerable<Step> OfScores(CylinderSpread spread, IReadOnlyList<CylinderValue>? scores)
    {
        if (scores is null)
        {
            yield break;
        }

        var median = Outliers.Median([.. spread.Values.Select(value => value.Value)]);
        var distance = Outliers.Median([.. spread.Values.Select(value => Math.Abs(value.Value - median))]);
        var largest = scores.MaxBy(score => Math.Abs(score.Value))!;
        yield return new(
            "0.6745 × (value − median) ÷ median distance from the median",
            [
                Value(spread.Values.First(value => value.Cylinder == largest.Cylinder), spread),
                new("Median", median, spread.Unit),
                new("Median distance from the median", distance, spread.Unit),
            ],
            new($"Modified z of {spread.Places.NameOf(largest.Cylinder)}", largest.Value, ""));
    }

    private static Figure Value(CylinderValue value, CylinderSpread spread)
    {
        var name = spread.Places.NameOf(value.Cylinder);
        return new($"{char.ToUpperInvariant(name[0])}{name[1..]}", value.Value, spread.Unit);
    }
}
