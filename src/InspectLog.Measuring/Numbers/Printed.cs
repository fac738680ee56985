using System.Globalization;

namespace InspectLog.Measuring;

/// <summary>Prints values, uncertainties, limits and decisions for people.</summary>
/// <remarks>
/// <para>Expanded uncertainties are given to two significant digits and values to the same place (JCGM 100:2008,
/// 7.2.6), rounding halves away from zero in decimal, so that 0.345 prints as 0.35 whatever its binary form.</para>
/// <para>Number and unit are joined by a no-break space (U+00A0), except the degree sign, which stands close. The minus
/// is the real one (U+2212), as wide as a digit. The decimal mark is a point in every culture; there are no thousands
/// marks, since choosing the unit keeps numbers short.</para>
/// </remarks>
public static class Printed
{
    private const char NoBreakSpace = '\u00A0';

    /// <summary>A value by itself, such as a limit or a typed number: as many digits as it has, six at most; a whole
    /// number in full.</summary>
    /// <param name="baseValue">The value, in the base unit of the kind.</param>
    /// <param name="unit">The unit to print it in.</param>
    public static string Value(double baseValue, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var value = unit.FromBase(baseValue);
        return WithUnit(Rounding.Text(value, Rounding.DecimalsOf(value, 6)), unit);
    }

    /// <summary>A step or another difference by itself, printed as <see cref="Value"/> prints a value.</summary>
    public static string Difference(double baseDifference, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var difference = unit.DifferenceFromBase(baseDifference);
        return WithUnit(Rounding.Text(difference, Rounding.DecimalsOf(difference, 6)), unit);
    }

    /// <summary>A value to the place of a step, as a display shows it: "2.0 Ω" in steps of 0.1 Ω.</summary>
    public static string OnDisplay(double baseValue, double baseStep, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return WithUnit(Rounding.Text(unit.FromBase(baseValue), Rounding.DecimalsOf(unit.DifferenceFromBase(baseStep), 6)), unit);
    }

    /// <summary>A value with its expanded uncertainty: "1.94 Ω ± 0.15 Ω".</summary>
    /// <param name="baseValue">The value, in the base unit of the kind.</param>
    /// <param name="expandedUncertainty">Its expanded uncertainty, base unit, 0 or more.</param>
    /// <param name="unit">The unit to print both in.</param>
    public static string Uncertain(double baseValue, double expandedUncertainty, Unit unit)
    {
        var (value, spread) = UncertainNumbers(baseValue, expandedUncertainty, unit);
        return $"{WithUnit(value, unit)} ± {WithUnit(spread, unit)}";
    }

    /// <summary>The two numbers of <see cref="Uncertain"/> without their unit, for a table whose heading has it.</summary>
    public static (string Value, string Spread) UncertainNumbers(
        double baseValue, double expandedUncertainty, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var spread = unit.DifferenceFromBase(expandedUncertainty);
        var value = unit.FromBase(baseValue);
        var decimals = spread > 0 ? Rounding.DecimalsFor(spread, 2) : Rounding.DecimalsOf(value, 10);
        return (Rounding.Text(value, decimals), spread > 0 ? Rounding.Text(spread, decimals) : "0");
    }

    /// <summary>Limits: "0.6 to 2.0 Ω", "at most 25 kΩ", "at least 10 MΩ".</summary>
    public static string Span(Limits limits, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return limits switch
        {
            { Lower: { } lower, Upper: { } upper } => Span(lower, upper, unit),
            { Upper: { } upper } => $"at most {Value(upper, unit)}",
            _ => $"at least {Value(limits.Lower.GetValueOrDefault(), unit)}",
        };
    }

    /// <summary>A span of values, both ends to the same place: "0.30 to 0.35 mm".</summary>
    public static string Span(double from, double to, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var (low, high) = (unit.FromBase(from), unit.FromBase(to));
        var decimals = Math.Max(Rounding.DecimalsOf(low, 6), Rounding.DecimalsOf(high, 6));
        return $"{Rounding.Text(low, decimals)} to {WithUnit(Rounding.Text(high, decimals), unit)}";
    }

    /// <summary>A probability as a chance: "84 in 100", with "more than 99 in 100" and "less than 1 in 100" at the
    /// ends, since nothing measured is certain.</summary>
    /// <param name="probability">From 0 to 1.</param>
    public static string Chance(double probability)
    {
        var inHundred = Math.Round(probability * 100, MidpointRounding.AwayFromZero);
        return inHundred >= 100 ? "more than 99 in 100"
            : inHundred < 1 ? "less than 1 in 100"
            : string.Create(CultureInfo.InvariantCulture, $"{inHundred} in 100");
    }

    /// <summary>A decided reading in one line, as under the reading strip: "0.65 Ω ± 0.10 Ω: conditional pass. 84 in
    /// 100 that it is within 0.6 to 2.0 Ω." Another coverage than the usual one is named. A bracket names its gauges
    /// instead.</summary>
    /// <param name="reading">What was read; null where only the value and its uncertainty are known.</param>
    /// <param name="conformity">What <see cref="ConformityRule"/> said of it.</param>
    /// <param name="limits">The limits it was decided against.</param>
    /// <param name="unit">The unit to print in.</param>
    public static string Sentence(Reading? reading, Conformity conformity, Limits limits, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(conformity);
        ArgumentNullException.ThrowIfNull(limits);
        var what = reading is Bracket bracket
            ? $"Between {Span(bracket.Goes, bracket.Stops, unit).Replace(" to ", " and ", StringComparison.Ordinal)}"
            : Uncertain(conformity.Value, conformity.ExpandedUncertainty, unit) + Coverage(conformity);
        var within = limits is { Lower: not null, Upper: not null } ? "within " : "";
        return $"{what}: {conformity.Decision.Words()}. "
            + $"{Capital(Chance(conformity.ProbabilityOfConformity))} that it is {within}{Span(limits, unit)}.";
    }

    /// <summary>What the expanded uncertainty of a decision covers, to stand behind it: " at 99 %"; nothing where it is the
    /// usual 95.45 %.</summary>
    public static string Coverage(Conformity conformity)
    {
        ArgumentNullException.ThrowIfNull(conformity);
        return conformity.Evaluation is { IsUsualCoverage: false } other ? $" at {other.CoverageText()}" : "";
    }

    private static string WithUnit(string number, Unit unit) =>
        unit.Symbol == "°" ? number + unit.Symbol : number + NoBreakSpace + unit.Symbol;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
