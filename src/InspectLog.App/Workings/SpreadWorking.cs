using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Checks.Derived;

namespace InspectLog.App.Workings;

/// <summary>How far the cylinders differ in a check that is measured at each.</summary>
public static class SpreadWorking
{
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
            var check = Measured(scene).First(one => one.Title == inputs.Text("check"));
            var unit = check.Measurand!.DisplayUnit;
            var values = FromInspection.Values(scene, check.Id)
                .Select(one => new CylinderValue(one.Cylinder, unit.FromBase(one.Value)))
                .ToList();
            var spread = CylinderSpread.Of(values, unit.Symbol);
            return [new(check.Title, spread.Steps, [])];
        });

    private static IEnumerable<Check> Measured(BenchScene scene) =>
        scene.Sheet.Checks.Where(check => check is { PerCylinder: true, Measurand: not null });

    private static List<string> Choices(BenchScene scene) => [.. Measured(scene).Select(check => check.Title)];

    private static IReadOnlyList<(int Cylinder, double Value)> Values(BenchScene scene, string title) =>
        FromInspection.Values(scene, Measured(scene).First(check => check.Title == title).Id);
}
