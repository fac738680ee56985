namespace InspectLog.Checks.Derived;

/// <summary>A value measured at one cylinder.</summary>
/// <param name="Cylinder">The cylinder.</param>
/// <param name="Value">The value, in any one unit.</param>
public sealed record CylinderValue(int Cylinder, double Value);

/// <summary>How far the cylinders of an engine differ in one measure.</summary>
/// <param name="Values">The values, by cylinder.</param>
/// <param name="Unit">Symbol of their unit; empty for a plain number.</param>
/// <param name="Lowest">The lowest; the first of several.</param>
/// <param name="Highest">The highest; the first of several.</param>
/// <param name="Range">Highest less lowest, in the unit of the values.</param>
/// <param name="Share">Lowest as a share of the highest; null where the lowest is below 0 or the highest is 0.</param>
/// <param name="Steps">The working.</param>
public sealed record CylinderSpread(
    IReadOnlyList<CylinderValue> Values,
    string Unit,
    CylinderValue Lowest,
    CylinderValue Highest,
    double Range,
    double? Share,
    IReadOnlyList<Step> Steps)
{
    /// <summary>What the places are called that the values belong to: the cylinders where nothing says another.</summary>
    public CheckPlaces Places { get; init; } = Cylinders;

    private static CheckPlaces Cylinders { get; } = new("cylinder", null, []);

    /// <summary>The spread of values measured at several cylinders.</summary>
    /// <param name="values">Two or more, each cylinder once.</param>
    /// <param name="unit">Symbol of the unit of the values; empty for a plain number.</param>
    /// <param name="places">What the places are called; the cylinders where it is left out.</param>
    /// <exception cref="ArgumentException">There are fewer than two values, one is no number, or a cylinder is given
    /// twice.</exception>
    public static CylinderSpread Of(IReadOnlyList<CylinderValue> values, string unit, CheckPlaces? places = null)
    {
        RefuseUnusable(values);
        var called = places ?? Cylinders;
        var byCylinder = values.OrderBy(value => value.Cylinder).ToList();
        var lowest = byCylinder.MinBy(value => value.Value)!;
        var highest = byCylinder.MaxBy(value => value.Value)!;
        var from = new Figure($"Lowest, {called.NameOf(lowest.Cylinder)}", lowest.Value, unit);
        var to = new Figure($"Highest, {called.NameOf(highest.Cylinder)}", highest.Value, unit);
        var range = new Figure("Range", highest.Value - lowest.Value, unit);
        double? share = lowest.Value >= 0 && highest.Value > 0 ? lowest.Value / highest.Value : null;
        var steps = new List<Step> { new("highest − lowest", [to, from], range) };
        if (share is { } part)
        {
            steps.Add(new("lowest ÷ highest", [from, to], new("Lowest as a share of the highest", 100 * part, "%")));
        }

        return new CylinderSpread(byCylinder, unit, lowest, highest, range.Value, share, steps) { Places = called };
    }

    /// <summary>Whether the lowest is high enough for a rule; null where there is no share to judge.</summary>
    public bool? Meets(BalanceRule rule) => Share is { } share ? share >= rule.LeastShare : null;

    private static void RefuseUnusable(IReadOnlyList<CylinderValue> values)
    {
        if (values.Count < 2)
        {
            throw new ArgumentException("Measure at least two cylinders to compare them.");
        }

        foreach (var value in values)
        {
            Sensible.UnlessFinite(value.Value, $"The value of cylinder {value.Cylinder}");
        }

        Sensible.CylindersGivenTwice(values.Select(value => value.Cylinder));
    }
}
