using System.Globalization;
using System.Text;

namespace InspectLog.Measuring;

/// <summary>Reads the digits and marks of a typed number, without yet knowing its unit.</summary>
internal static class Digits
{
    /// <summary>Replaces the characters keyboards and phones put in for plain ones: full-width and other decimal
    /// digits, typographic minus signs, hard spaces, look-alike unit signs. Superscripts and fractions stay as they are, so that
    /// they are refused and not taken for digits.</summary>
    internal static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber
                ? plain.Append((int)Rune.GetNumericValue(rune))
                : plain.Append(Plain(rune));
        }

        return plain.ToString().Trim();
    }

    private static string Plain(Rune rune) => rune.Value switch
    {
        0x2212 or 0x2010 or 0x2011 or 0x2012 or 0x2013 or 0xFE63 => "-",
        0x2126 => "Ω",
        0x03BC => "µ",
        0x2103 => "°C",
        0x2109 => "°F",
        0x2019 => "'",
        >= 0xFF01 and <= 0xFF5E => ((char)(rune.Value - 0xFEE0)).ToString(),
        _ when Rune.IsWhiteSpace(rune) => " ",
        _ => rune.ToString(),
    };

    /// <summary>The meanings a run of digits, points, commas and grouping marks can have, each as digits with at most
    /// one point, likeliest first. Empty where it makes no sense as one number.</summary>
    internal static IReadOnlyList<string> Meanings(string run)
    {
        var last = run.LastIndexOfAny(['.', ',']);
        var grouping = run.FirstOrDefault(c => c is ' ' or '\'');
        if (grouping != default)
        {
            return last < 0 ? Grouped(run, "", grouping) : Grouped(run[..last], run[(last + 1)..], grouping);
        }

        if (last < 0)
        {
            return [run];
        }

        var mark = run[last];
        var (whole, fraction) = (run[..last], run[(last + 1)..]);
        var other = mark == '.' ? ',' : '.';
        if (whole.Contains(other, StringComparison.Ordinal))
        {
            return Grouped(whole, fraction, other);
        }

        if (whole.Contains(mark, StringComparison.Ordinal))
        {
            return Grouped(run, "", mark);
        }

        return OneMark(whole, fraction, mark);
    }

    // A single mark with three digits after it may be either. A point is likelier a decimal mark than a comma is.
    private static string[] OneMark(string whole, string fraction, char mark)
    {
        if (fraction.Length == 0)
        {
            return [];
        }

        var asDecimal = (whole.Length == 0 ? "0" : whole) + "." + fraction;
        var mayGroup = fraction.Length == 3 && whole.Length is >= 1 and <= 3 && whole[0] != '0';
        return !mayGroup ? [asDecimal]
            : mark == '.' ? [asDecimal, whole + fraction]
            : [whole + fraction, asDecimal];
    }

    private static string[] Grouped(string whole, string fraction, char grouping)
    {
        var groups = whole.Split(grouping);
        var wellFormed = groups[0].Length is >= 1 and <= 3
            && groups[0][0] != '0'
            && groups.Skip(1).All(group => group.Length == 3)
            && groups.All(AllDigits)
            && AllDigits(fraction);
        return !wellFormed ? []
            : fraction.Length == 0 ? [string.Concat(groups)]
            : [string.Concat(groups) + "." + fraction];
    }

    private static bool AllDigits(string text) => text.All(char.IsAsciiDigit);
}
