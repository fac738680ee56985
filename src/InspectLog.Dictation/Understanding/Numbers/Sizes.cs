using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>A number turned into the base unit of a check.</summary>
/// <param name="Value">The value in the check's base unit.</param>
/// <param name="Cost">How unlikely it is that this was meant.</param>
/// <param name="Why">What there is to doubt.</param>
/// <param name="One">The unit the doubt is about.</param>
/// <param name="Other">The unit it may be instead.</param>
internal readonly record struct Size(decimal Value, double Cost, SizeDoubt Why = SizeDoubt.None, Unit? One = null, Unit? Other = null)
{
    /// <summary>The doubt in words; null where there is none.</summary>
    public string? Doubt(Check check) => Why switch
    {
        SizeDoubt.Unlikely => $"that is an unlikely value for {check.ShortTitle}",
        SizeDoubt.WrongUnit => Doubts.WrongUnit(One!.Symbol, check.ShortTitle, check.Measurand!.DisplayUnit.Symbol),
        SizeDoubt.TwoUnits => $"this may mean {One!.Symbol} or {Other!.Symbol}",
        SizeDoubt.NoUnit => $"no unit was said: {One!.Symbol} or {Other!.Symbol}",
        _ => null,
    };
}

/// <summary>What there is to doubt about a size.</summary>
internal enum SizeDoubt
{
    None,

    /// <summary>It lies outside the check's plausible span.</summary>
    Unlikely,

    /// <summary>The unit said measures something else.</summary>
    WrongUnit,

    /// <summary>The word said stands for two units, and both fit.</summary>
    TwoUnits,

    /// <summary>No unit was said, and two fit.</summary>
    NoUnit,
}

/// <summary>Sizes numbers for a check: converts units, and finds the unit where none was said from the span of values
/// the check can sensibly have.</summary>
internal static class Sizes
{
    /// <summary>Cost of a value outside the check's plausible span.</summary>
    public const double Implausible = 6;

    private const double WrongUnit = 5;
    private const double UnitUnsaid = 0.2;

    private const decimal Largest = 1_000_000_000_000m;

    private static readonly Unit[] ForResistance = [Units.Ohm, Units.Kilohm];
    private static readonly Unit[] ForLength = [Units.Millimetre, Units.Thou, Units.Inch];
    private static readonly Unit[] ForVoltage = [Units.Volt];
    private static readonly Unit[] ForAngle = [Units.Degree];

    /// <summary>What a number with the unit said after it measures; nothing for a unit no check measures in.</summary>
    public static Size? Of(decimal number, UnitReading? unit, Check check)
    {
        var measurand = check.Measurand ?? throw new ArgumentException("The check measures nothing.", nameof(check));
        if (unit is null)
        {
            var implied = Best(number, Usual(measurand.Kind), measurand, SizeDoubt.NoUnit);
            return implied.Why == SizeDoubt.Unlikely
                ? Unlikely(number, measurand.DisplayUnit)
                : InThou(number, implied.Value) ? new(implied.Value, UnitUnsaid, SizeDoubt.NoUnit, Units.Thou, Units.Millimetre)
                : implied with { Cost = implied.Cost + UnitUnsaid };
        }

        if (unit.Foreign || IsOfAnotherThing(unit, measurand.Kind))
        {
            return null;
        }

        if (unit.Units[0].Kind != measurand.Kind)
        {
            var meant = Of(number, null, check)!.Value;
            return meant with { Cost = meant.Cost + WrongUnit, Why = SizeDoubt.WrongUnit, One = unit.Units[0] };
        }

        return Best(number * unit.Sign, unit.Units, measurand, SizeDoubt.TwoUnits);
    }

    // "The coil is two inches from the exhaust", "the ballast is at forty degrees": nobody measures that there, while volts
    // may be said for ohms, and thou for thousand.
    private static bool IsOfAnotherThing(UnitReading unit, QuantityKind kind) =>
        unit.Units[0].Kind is QuantityKind.Length or QuantityKind.Angle && unit.Units[0].Kind != kind && kind is QuantityKind.Resistance or QuantityKind.Voltage
        && !unit.Units.Contains(Units.Thou) && unit.Doubt is null;

    // "5.51" of a gap: thou are said in whole numbers, at most in halves.
    private static bool InThou(decimal number, decimal size) =>
        number * 2 != decimal.Truncate(number * 2) && size == ToBase(number, Units.Thou);

    // The unit with which the number falls into the plausible span, nearest to the limits.
    private static Size Best(decimal number, IReadOnlyList<Unit> units, Measurand measurand, SizeDoubt ifTwo)
    {
        Unit? best = null, second = null;
        var (value, misfit) = (0m, double.MaxValue);
        foreach (var unit in units)
        {
            var size = ToBase(number, unit);
            if (!measurand.Plausible.Holds((double)size))
            {
                continue;
            }

            var far = Misfit(size, measurand);
            if (best is null || far < misfit || far == misfit && unit == measurand.DisplayUnit)
            {
                (second, best, value, misfit) = (best, unit, size, far);
            }
            else
            {
                second ??= unit;
            }
        }

        return best is null ? Unlikely(number, units[0])
            : second is null ? new(value, 0)
            : new(value, 0, ifTwo, best, second);
    }

    private static Size Unlikely(decimal number, Unit unit) => new(ToBase(number, unit), Implausible, SizeDoubt.Unlikely);

    private static Unit[] Usual(QuantityKind kind) => kind switch
    {
        QuantityKind.Resistance => ForResistance,
        QuantityKind.Length => ForLength,
        QuantityKind.Voltage => ForVoltage,
        QuantityKind.Angle => ForAngle,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    // 0 within the limits, growing with the distance outside of them.
    private static double Misfit(decimal value, Measurand measurand)
    {
        var v = (double)value;
        var below = measurand.Limits?.Lower is { } lower && v < lower ? (lower - v) / Math.Max(lower, v) : 0;
        var above = measurand.Limits?.Upper is { } upper && v > upper ? (v - upper) / Math.Max(upper, v) : 0;
        return Math.Max(below, above);
    }

    private static decimal ToBase(decimal number, Unit unit) =>
        Math.Clamp(number, -Largest, Largest) * (decimal)unit.InBaseUnit;
}
