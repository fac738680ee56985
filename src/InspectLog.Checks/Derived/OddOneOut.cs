using InspectLog.Measuring;

namespace InspectLog.Checks.Derived;

/// <summary>Which cylinder, if any, differs from the others by more than chance. Two tests are shown side by side:
/// Grubbs' test asks about the one farthest out; modified z does not let one outlier hide another.</summary>
/// <param name="Farthest">The value farthest from the mean.</param>
/// <param name="Grubbs">Grubbs' test of that value; null where all values are equal.</param>
/// <param name="Scores">The modified z of each cylinder; null where more than half the values are equal.</param>
/// <param name="Odd">Cylinders that either test calls odd, ascending.</param>
/// <param name="Sentence">What follows, for people.</param>
/// <param name="Steps">The working.</param>
public sealed record OddOneOut(
    CylinderValue Farthest,
    GrubbsResult? Grubbs,
    IReadOnlyList<CylinderValue>? Scores,
    IReadOnlyList<int> Odd,
    string Sentence,
    IReadOnlyList<Step> Steps)
{
    /// <summary>The modified z beyond which a value is odd (Iglewicz and Hoaglin).</summary>
    public const double OddScore = 3.5;

    /// <summary>The chance of calling one of a set of like values odd by Grubbs' test.</summary>
    public const double Level = 0.05;

    /// <summary>Looks for the odd one out.</summary>
    /// <param name="spread">The values, three or more.</param>
    /// <exception cref="ArgumentException">There are fewer than three values.</exception>
    public static OddOneOut Of(CylinderSpread spread)
    {
        var values = spread.Values.Select(value => value.Value).ToArray();
        var grubbs = Outliers.Grubbs(values, Level);
        var scores = Outliers.ModifiedZ(values)?
            .Zip(spread.Values, (score, value) => new CylinderValue(value.Cylinder, score)).ToList();
        var farthest = spread.Values[grubbs?.Index ?? 0];
        var odd = (scores ?? []).Where(score => Math.Abs(score.Value) > OddScore).Select(score => score.Cylinder)
            .Concat(grubbs is { IsOutlier: true } ? [farthest.Cylinder] : [])
            .Distinct().Order().ToList();
        return new OddOneOut(
            farthest, grubbs, scores, odd, Say(spread.Places, grubbs, odd),
            [.. OddOneOutSteps.OfGrubbs(spread, farthest, grubbs), .. OddOneOutSteps.OfScores(spread, scores)]);
    }

    private static string Say(CheckPlaces places, GrubbsResult? grubbs, List<int> odd) => (grubbs, odd) switch
    {
        (null, _) => "All values are equal.",
        (_, []) => $"No {places.Noun} differs from the others by more than chance.",
        (_, [var one]) => $"{Capital(places.NameOf(one))} differs from the others by more than chance.",
        _ => $"{Capital(places.NameOf(odd))} differ from the others by more than chance.",
    };

    private static string Capital(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";
}
