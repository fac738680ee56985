using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>How a number came to its unit.</summary>
internal enum UnitSource
{
    /// <summary>The unit was said.</summary>
    Said,

    /// <summary>A word was said that stands for several units of the kind, and this is not the first of them.</summary>
    SaidOther,

    /// <summary>No unit was said; it is the one the check is shown in.</summary>
    Shown,

    /// <summary>No unit was said; it is another one of the kind.</summary>
    Other,
}

/// <summary>A value a number can have for a check.</summary>
internal readonly record struct ValueMeaning(double Value, UnitSource Source);

/// <summary>Which values a number can have for a check.</summary>
internal static class ValueMeanings
{
    private const double Beyond = 3;

    /// <summary>The values; none where it cannot be one of the check.</summary>
    public static IEnumerable<ValueMeaning> Of(CheckEntry check, NumberSegment number)
    {
        if (check.Measurand is not { } measurand)
        {
            return [];
        }

        if (number.Form == NumberForm.ZeroAngle)
        {
            return measurand.Kind == QuantityKind.Angle ? [new(0, UnitSource.Said)] : [];
        }

        if (number.Units is { } units)
        {
            return units.Where(unit => unit.Unit?.Kind == measurand.Kind)
                .Select((unit, index) => new ValueMeaning(unit.ToBase(number.Value), index == 0 ? UnitSource.Said : UnitSource.SaidOther))
                .Where(meaning => Holds(measurand, meaning.Value, meaning.Source == UnitSource.Said));
        }

        return Units.Of(measurand.Kind)
            .Select(unit => new ValueMeaning(unit.ToBase(number.Value), unit == measurand.DisplayUnit ? UnitSource.Shown : UnitSource.Other))
            .Where(meaning => Holds(measurand, meaning.Value, false))
            .OrderBy(meaning => meaning.Source);
    }

    /// <summary>Whether a number can be a value of a check.</summary>
    public static bool Fits(CheckEntry check, NumberSegment number) => Of(check, number).Any();

    /// <summary>Where a value lies to the limits of a check: 0 within, 1 to 3 ever farther, 4 not plausible.</summary>
    public static int Distance(Measurand measurand, double value)
    {
        if (!measurand.Plausible.Holds(value))
        {
            return 4;
        }

        if (measurand.Limits is not { } limits || (limits.Lower is null || value >= limits.Lower) && (limits.Upper is null || value <= limits.Upper))
        {
            return 0;
        }

        var limit = limits.Lower is { } lower && value < lower ? lower : limits.Upper!.Value;
        var ratio = limit == 0 ? 1 : value / limit;
        return ratio is > 0.7 and < 1.4 ? 1 : ratio is > 0.4 and < 2.5 ? 2 : 3;
    }

    /// <summary>Whether a value is one of the limits of a check, which people name as often as they measure it.</summary>
    public static bool IsLimit(Measurand measurand, double value) =>
        measurand.Limits is { } limits && (IsSame(value, limits.Lower) || IsSame(value, limits.Upper));

    private static bool IsSame(double value, double? limit) => limit is { } one && Math.Abs(value - one) <= 1e-6 * Math.Abs(one);

    private static bool Holds(Measurand measurand, double value, bool widely)
    {
        var (from, to) = (measurand.Plausible.From, measurand.Plausible.To);
        return measurand.Plausible.Holds(value)
            || widely && value >= (from > 0 ? from / Beyond : from * 1.5) && value <= (to > 0 ? to * Beyond : to);
    }
}
