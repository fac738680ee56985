using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.Checks.Derived;

/// <summary>A gap in the units gauges are marked in. An inch is 25.4 mm exactly (international yard and pound
/// agreement of 1959).</summary>
/// <param name="Millimetres">In mm.</param>
/// <param name="Inches">In inches.</param>
/// <param name="Thou">In thousandths of an inch.</param>
/// <param name="Steps">The working.</param>
public sealed record Gap(double Millimetres, double Inches, double Thou, IReadOnlyList<Step> Steps)
{
    /// <summary>A gap given in any unit of length.</summary>
    /// <param name="value">The gap, 0 or more.</param>
    /// <param name="unit">Its unit.</param>
    /// <exception cref="ArgumentException">The gap is below 0, or the unit is not one of length.</exception>
    public static Gap From(double value, Unit unit)
    {
        Sensible.UnlessZeroOrMore(value, "The gap");
        if (unit.Kind != QuantityKind.Length)
        {
            throw new ArgumentException($"{unit.Symbol} is not a unit of length. Use mm, in or thou.");
        }

        var given = new Figure("Gap", value, unit.Symbol);
        var millimetres = unit.ToBase(value);
        var inches = Units.Inch.FromBase(millimetres);
        var thou = Units.Thou.FromBase(millimetres);
        Step toMillimetres = new($"gap × {Factor(unit)} mm", [given], InMillimetres(millimetres));
        Step[] steps =
        [
            .. unit == Units.Millimetre ? Array.Empty<Step>() : [toMillimetres],
            new("gap ÷ 25.4 mm", [InMillimetres(millimetres)], new("Gap", inches, "in")),
            new("gap ÷ 0.0254 mm", [InMillimetres(millimetres)], new("Gap", thou, "thou")),
        ];
        return new Gap(millimetres, inches, thou, steps);
    }

    private static string Factor(Unit unit) => unit.InBaseUnit.ToString(CultureInfo.InvariantCulture);

    private static Figure InMillimetres(double millimetres) => new("Gap", millimetres, "mm");
}
