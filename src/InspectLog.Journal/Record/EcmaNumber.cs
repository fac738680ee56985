using System.Globalization;

namespace InspectLog.Journal.Record;

/// <summary>Numbers as ECMAScript prints them (ECMA-262, Number::toString), which RFC 8785, 3.2.2.3 prescribes.</summary>
internal static class EcmaNumber
{
    /// <summary>The shortest text that reads back as the same number.</summary>
    /// <exception cref="FormatException">The number is not finite: JSON has no word for it.</exception>
    public static string Format(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new FormatException("it holds a number that JSON cannot hold");
        }

        if (value == 0)
        {
            return "0"; // minus zero too
        }

        var (digits, point) = ShortestDigits(Math.Abs(value));
        return (value < 0 ? "-" : "") + Lay(digits, point);
    }

    /// <summary>The shortest digits that identify the number, and where the decimal point stands in them: the
    /// number is 0.digits times ten to the power of point.</summary>
    private static (string Digits, int Point) ShortestDigits(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = e < 0 ? 0 : int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var mantissa = e < 0 ? text : text[..e];
        var dot = mantissa.IndexOf('.', StringComparison.Ordinal);
        var whole = dot < 0 ? mantissa.Length : dot;
        var all = mantissa.Replace(".", "", StringComparison.Ordinal);
        var digits = all.TrimStart('0');
        return (digits.TrimEnd('0'), whole + exponent - (all.Length - digits.Length));
    }

    private static string Lay(string digits, int point) => point switch
    {
        > 21 or <= -6 => Scientific(digits, point - 1),
        <= 0 => "0." + new string('0', -point) + digits,
        _ when digits.Length <= point => digits.PadRight(point, '0'),
        _ => digits[..point] + "." + digits[point..],
    };

    private static string Scientific(string digits, int exponent)
    {
        var mantissa = digits.Length == 1 ? digits : digits[..1] + "." + digits[1..];
        var sign = exponent < 0 ? "-" : "+";
        return mantissa + "e" + sign + Math.Abs(exponent).ToString(CultureInfo.InvariantCulture);
    }
}
