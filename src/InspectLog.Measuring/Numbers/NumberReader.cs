using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>Reads a typed number with its unit: see <see cref="TypedNumber.Read"/>.</summary>
internal static partial class NumberReader
{
    private const int LongestText = 60;

    internal static TypedNumber Read(string? text, QuantityKind kind, Unit fieldUnit, PlausibleSpan plausible)
    {
        ArgumentNullException.ThrowIfNull(fieldUnit);
        if (fieldUnit.Kind != kind)
        {
            throw new ArgumentException("The field's unit must be one of the kind the check measures.");
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            return Refused($"Type the value, such as 9.4 {fieldUnit.Symbol}.");
        }

        if (text.Length > LongestText)
        {
            return Refused("That is too long for a number. Type one value, and its unit if it is not the one shown.");
        }

        var plain = Digits.Plain(text);
        if (Overload().IsMatch(plain))
        {
            return Refused("The meter shows that the value is beyond its range. Choose a higher range and measure "
                + "again, or record what was found as a condition.");
        }

        return NumberShape.Of(plain) is { } shape
            ? Read(plain, shape, kind, fieldUnit, plausible)
            : Refused($"{Quoted(plain)} is not a number. Type one value, such as 9.4 {fieldUnit.Symbol}.");
    }

    private static TypedNumber Read(
        string plain, NumberShape shape, QuantityKind kind, Unit fieldUnit, PlausibleSpan plausible)
    {
        if (NotOneNumber(plain, shape) is { } whyNot)
        {
            return whyNot;
        }

        var digits = shape.Meanings();
        if (digits.Count == 0)
        {
            return Refused($"The points, commas or spaces in {Quoted(plain)} do not fit one number. "
                + "Type it with one decimal mark and no thousands marks, such as 1234.5.");
        }

        IReadOnlyList<UnitMeaning> units =
            shape.UnitText.Length == 0 ? [new(fieldUnit)] : UnitWords.Read(shape.UnitText, kind);
        var fitting = units.Where(meaning => meaning.Unit.Kind == kind).ToList();
        if (fitting.Count == 0)
        {
            return units.Count > 0 ? WrongKind(units[0].Unit, kind) : UnknownUnit(shape.UnitText, kind);
        }

        return WrongSign(shape, fitting[0], kind) ?? Choose(shape, digits, fitting, plausible);
    }

    private static TypedNumber.Refused? NotOneNumber(string plain, NumberShape shape) =>
        shape.UnitText.StartsWith('/') || shape.UnitText.StartsWith('⁄')
            ? Refused("Type a fraction as a decimal number: 3/4 is 0.75.")
            : shape.UnitText.Any(char.IsAsciiDigit) && UnitWords.Find(shape.UnitText).Count == 0 // kg/m3 is one unit
                ? Refused("Type one number at a time, without a range or a list.")
                : shape.Run[^1] is '.' or ','
                    ? Refused($"{Quoted(plain)} stops at its decimal mark. Finish the number, or leave the mark out.")
                    : null;

    private static TypedNumber.Refused? WrongSign(NumberShape shape, UnitMeaning unit, QuantityKind kind) =>
        !shape.Negative ? null
            : !Kinds.MayBeNegative(kind)
                ? Refused(DisplayRules.BelowZero(kind))
                : unit.SaysSide
                    ? Refused("Give either a minus sign or the side of top dead centre, not both.")
                    : null;

    private static TypedNumber Choose(
        NumberShape shape, IReadOnlyList<string> digits, List<UnitMeaning> units, PlausibleSpan plausible)
    {
        var all = digits
            .SelectMany(meaning => units.Select(unit => shape.Value(meaning, unit)))
            .DistinctBy(choice => choice.BaseValue)
            .ToList();
        if (!all.TrueForAll(choice => double.IsFinite(choice.BaseValue)))
        {
            return Refused("That number is too large. Check it and type it again.");
        }

        if (shape.HasValue && all.Exists(choice => choice.BaseValue == 0))
        {
            return Refused("That number is too small. Check it and type it again.");
        }

        var likely = all.Where(choice => plausible.Holds(choice.BaseValue)).ToList();
        if (all.Count == 1)
        {
            var others = likely.Count == 0 && shape.UnitText.Length == 0
                ? InOtherUnits(shape, digits[0], units[0].Unit, plausible)
                : [];
            return others.Count == 0 ? all[0] : Ask(others.Concat(all));
        }

        return likely.Count == 1 ? likely[0] : Ask(likely.Concat(all));
    }

    // Typed without a unit and out of the question in the field's own: 12 in a field of millimetres may be thou.
    private static List<TypedNumber.Certain> InOtherUnits(
        NumberShape shape, string digits, Unit fieldUnit, PlausibleSpan plausible) =>
        [.. Units.Of(fieldUnit.Kind)
            .Where(unit => unit != fieldUnit)
            .Select(unit => shape.Value(digits, new(unit)))
            .Where(choice => plausible.Holds(choice.BaseValue))];

    private static TypedNumber.Ambiguous Ask(IEnumerable<TypedNumber.Certain> likeliestFirst)
    {
        var choices = likeliestFirst.DistinctBy(choice => choice.BaseValue).ToList();
        var words = choices.ConvertAll(choice => Printed.Value(choice.BaseValue, choice.Unit));
        return new($"Do you mean {string.Join(", ", words[..^1])} or {words[^1]}?", choices);
    }

    private static TypedNumber.Refused WrongKind(Unit unit, QuantityKind kind) =>
        Refused($"{unit.Symbol} is a unit of {Kinds.Noun(unit.Kind)}, but this check measures {Kinds.Noun(kind)} in "
            + $"{Kinds.UnitList(kind)}. Type that value, or choose the other check.");

    private static TypedNumber.Refused UnknownUnit(string unitText, QuantityKind kind) =>
        Refused($"{Quoted(unitText)} after the number is not a unit this check knows. It measures {Kinds.Noun(kind)} in "
            + $"{Kinds.UnitList(kind)}.");

    private static TypedNumber.Refused Refused(string message) => new(message);

    // Only as much of what was typed as a message can hold.
    private static string Quoted(string text) => text.Length <= 20 ? $"\"{text}\"" : $"\"{text[..20]}…\"";

    // What meters show, and people type, for a value beyond the range.
    [GeneratedRegex(
        @"^[-+]?(?:[.0-9]*\ *o\.?l\.?|\.?0\.?l\.?|∞|inf|infinity|infinite|over|overload|over range|open|open circuit)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Overload();
}
