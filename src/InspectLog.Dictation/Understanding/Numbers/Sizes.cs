using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>A number turned into the base unit of a check.</summary>
/// <param name="Value">The value in the check's base unit.</param>
/// <param name="Cost">How unlikely it is that this was meant.</param>
/// <param name="Doubt">Why a person should look twice; null where there is nothing to doubt.</param>
internal readonly record struct Size(decimal Value, double Cost, string? Doubt);

/// <summary>Sizes numbers for a check: converts units, and finds the unit where none was said from the span of values
/// the check can sensibly have.</summary>
internal static class Sizes
{
    /// <summary>Cost of a value outside the check's plausible span.</summary>
    public const double Implausible = 6;

    private const double WrongUnit = 5;

    private const decimal Largest = 1_000_000_000_000m;

    public static Size Of(decimal number, UnitReading? unit, Check check)
    {
        var measurand = check.Measurand ?? throw new ArgumentException("The check measures nothing.", nameof(check));
        if (unit is { Foreign: true })
        {
            return new(number, 100, $"that unit does not fit {check.ShortTitle}");
        }

        var fitting = unit?.Units.Where(said => said.Kind == measurand.Kind).ToList();
        if (fitting is { Count: > 0 })
        {
            return Said(number * unit!.Sign, fitting, measurand, check);
        }

        var implied = Implied(number, measurand, check);
        return unit is null
            ? implied
            : implied with
            {
                Cost = implied.Cost + WrongUnit,
                Doubt = $"{unit.Units[0].Symbol} does not fit {check.ShortTitle}, which is measured in {measurand.DisplayUnit.Symbol}",
            };
    }

    private static Size Said(decimal number, List<Unit> units, Measurand measurand, Check check)
    {
        var values = units.Select(unit => ToBase(number, unit)).ToList();
        var plausible = values.Where(value => Holds(measurand, value)).ToList();
        return plausible.Count switch
        {
            0 => Unlikely(values[0], check),
            1 => new(plausible[0], 0, null),
            _ => new(plausible[0], 0, $"this may mean {units[0].Symbol} or {units[1].Symbol}"),
        };
    }

    private static Size Implied(decimal number, Measurand measurand, Check check)
    {
        var choices = UsualUnits(measurand.Kind)
            .Select(unit => (Unit: unit, Value: ToBase(number, unit)))
            .Where(choice => Holds(measurand, choice.Value))
            .OrderBy(choice => Misfit(choice.Value, measurand))
            .ThenBy(choice => choice.Unit == measurand.DisplayUnit ? 0 : 1)
            .ToList();
        return choices.Count switch
        {
            0 => Unlikely(ToBase(number, measurand.DisplayUnit), check),
            1 => new(choices[0].Value, 0.2, null),
            _ => new(choices[0].Value, 0.2, $"no unit was said: {choices[0].Unit.Symbol} or {choices[1].Unit.Symbol}"),
        };
    }

    private static Size Unlikely(decimal value, Check check) =>
        new(value, Implausible, $"that is an unlikely value for {check.ShortTitle}");

    private static IEnumerable<Unit> UsualUnits(QuantityKind kind) => kind switch
    {
        QuantityKind.Resistance => [Units.Ohm, Units.Kilohm],
        QuantityKind.Length => [Units.Millimetre, Units.Thou, Units.Inch],
        _ => [Units.BaseOf(kind)],
    };

    private static bool Holds(Measurand measurand, decimal value) => measurand.Plausible.Holds((double)value);

    // 0 within the limits, growing with the distance outside of them.
    private static double Misfit(decimal value, Measurand measurand)
    {
        var v = (double)value;
        var below = measurand.Limits?.Lower is { } lower && v < lower ? (lower - v) / Math.Max(lower, v) : 0;
        var above = measurand.Limits?.Upper is { } upper && v > upper ? (v - upper) / Math.Max(upper, v) : 0;
        return Math.Max(below, above);
    }

    private static decimal ToBase(decimal number, Unit unit)
    {
        var bounded = Math.Clamp(number, -Largest, Largest);
        return bounded * (decimal)unit.InBaseUnit;
    }
}
