using InspectLog.Checks;
using InspectLog.Checks.Derived;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>How far the cylinders differ in a check that is measured at each, and which one is odd.</summary>
public static class SpreadWorking
{
    /// <summary>Values needed to say that one of them is odd.</summary>
    private const int FewestForOdd = 3;

    /// <summary>The cylinders against each other.</summary>
    public static readonly WorkingKind Kind = new(
        "spread",
        "Cylinders compared",
        "How far the places of one check lie apart, and which is the odd one out.",
        scene =>
        [
            new("check", "Check", "", Choices(scene).FirstOrDefault(choice => Values(scene, choice).Count > 1) ?? Choices(scene).FirstOrDefault() ?? "",
                [.. Choices(scene)]),
        ],
        (inputs, scene) =>
        {
            var title = inputs.Choice("check");
            var check = Measured(scene).FirstOrDefault(one => one.Title == title)
                ?? throw new ArgumentException("This sheet measures nothing at several places.");
            var unit = check.Measurand!.DisplayUnit;
            var values = FromInspection.Values(scene, check.Id)
                .Select(one => new CylinderValue(one.Cylinder, unit.FromBase(one.Value)))
                .ToList();
            var spread = CylinderSpread.Of(values, unit.Symbol, check.Places is { Own: not null } own ? own : null);
            return [new(check.Title, spread.Steps, [.. AgainstScatter(scene, check)]), Odd(spread)];
        }) { Checks = ["lead-resistance", "plug-gap", "compression", "compression-wet", "leak-down", "cylinder-balance", "cell-density"] };

    // One-way analysis of variance (JCGM 100:2008, H.5); it needs repeats of at least one place.
    private static IEnumerable<string> AgainstScatter(BenchScene scene, Check check)
    {
        var groups = FromInspection.Repeats(scene, check.Id);
        if (groups.Count < 2 || groups.All(group => group.Count == 1))
        {
            yield break;
        }

        var variance = AnalysisOfVariance.Of(groups);
        yield return $"Repeats say how far single readings scatter. Cylinders that are alike would lie so far apart with that scatter in {Printed.Chance(variance.Probability).Replace(" in 100", " of 100", StringComparison.Ordinal)} sets"
            + $" (F\u00a0=\u00a0{new Figure("", variance.F, "").Text} with {variance.BetweenDegrees} and {variance.WithinDegrees} degrees of freedom).";
    }

    private static WorkedPart Odd(CylinderSpread spread)
    {
        const string heading = "The odd one out";
        if (spread.Values.Count < FewestForOdd)
        {
            return new(heading, [], ["It takes three values or more to say that one of them is odd."]);
        }

        var odd = OddOneOut.Of(spread);
        return new(heading, odd.Steps,
        [
            odd.Sentence,
            .. odd.Scores is { } scores
                ? scores.Select(score =>
                    $"{Capital(spread.Places.NameOf(score.Cylinder))}: {ValueOf(spread, score.Cylinder)}, modified z {new Figure("", score.Value, "").Text}.")
                : ["More than half of the values are equal, so there is no modified z to go by."],
            "Grubbs' test asks of the one farthest out whether like values would lie so far apart in 5 of 100 sets; a modified z beyond 3.5 calls a value odd even where a second one hides it from that test.",
        ]);
    }

    private static string Capital(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    private static string ValueOf(CylinderSpread spread, int cylinder) =>
        new Figure("", spread.Values.First(value => value.Cylinder == cylinder).Value, spread.Unit).Text;

    private static IEnumerable<Check> Measured(BenchScene scene) =>
        scene.Sheet.Checks.Where(check => check is { PerCylinder: true, Measurand: not null });

    private static List<string> Choices(BenchScene scene) => [.. Measured(scene).Select(check => check.Title)];

    private static IReadOnlyList<(int Cylinder, double Value)> Values(BenchScene scene, string title) =>
        FromInspection.Values(scene, Measured(scene).First(check => check.Title == title).Id);
}
