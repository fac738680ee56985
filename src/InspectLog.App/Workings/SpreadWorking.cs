using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Checks.Derived;

namespace InspectLog.App.Workings;

/// <summary>How far the cylinders differ in a check that is measured at each, and which one is odd.</summary>
public static class SpreadWorking
{
    /// <summary>Values needed to say that one of them is odd.</summary>
    private const int FewestForOdd = 3;

    public static readonly WorkingKind Kind = new(
        "spread",
        "Cylinders compared",
        "How far the places of one check lie apart, and which is the odd one out.",
        scene =>
        [
            new("check", "Check", "", Choices(scene).FirstOrDefault(choice => Values(scene, choice).Count > 1) ?? Choices(scene)[0],
                [.. Choices(scene)]),
        ],
        (inputs, scene) =>
        {
            var title = inputs.Choice("check");
            var check = Measured(scene).First(one => one.Title == title);
            var unit = check.Measurand!.DisplayUnit;
            var values = FromInspection.Values(scene, check.Id)
                .Select(one => new CylinderValue(one.Cylinder, unit.FromBase(one.Value)))
                .ToList();
            var spread = CylinderSpread.Of(values, unit.Symbol);
            return [new(check.Title, spread.Steps, []), Odd(spread)];
        }) { Checks = ["lead-resistance", "plug-gap"] };

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
                    $"Cylinder {score.Cylinder}: {ValueOf(spread, score.Cylinder)}, modified z {new Figure("", score.Value, "").Text}.")
                : ["More than half of the values are equal, so there is no modified z to go by."],
            "Grubbs' test asks of the one farthest out whether like values would lie so far apart in 5 of 100 sets; a modified z beyond 3.5 calls a value odd even where a second one hides it from that test.",
        ]);
    }

    private static string ValueOf(CylinderSpread spread, int cylinder) =>
        new Figure("", spread.Values.First(value => value.Cylinder == cylinder).Value, spread.Unit).Text;

    private static IEnumerable<Check> Measured(BenchScene scene) =>
        scene.Sheet.Checks.Where(check => check is { PerCylinder: true, Measurand: not null });

    private static List<string> Choices(BenchScene scene) => [.. Measured(scene).Select(check => check.Title)];

    private static IReadOnlyList<(int Cylinder, double Value)> Values(BenchScene scene, string title) =>
        FromInspection.Values(scene, Measured(scene).First(check => check.Title == title).Id);
}
