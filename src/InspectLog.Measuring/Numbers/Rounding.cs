using System.Globalization;

namespace InspectLog.Measuring;

/// <summary>Rounds in decimal and prints to a chosen place.</summary>
internal static class Rounding
{
    // Below this many places a double has nothing more to say, and decimal can hold no more.
    private const int MostDecimals = 15;

    // What decimal can hold with room to spare; nothing measured comes near.
    private const double Largest = 1e20;

    /// <summary>The place, as a number of decimals, to which a size above 0 is rounded to keep
    /// <paramref name="digits"/> significant digits. Negative for tens and hundreds.</summary>
    internal static int DecimalsFor(double size, int digits)
    {
        var decimals = digits - 1 - Exponent(size);
        // 0.0996 to two digits rounds up into the next power of ten, and is then 0.10 and not 0.100.
        return Exponent(Round(size, decimals)) > Exponent(size) ? decimals - 1 : decimals;
    }

    /// <summary>The decimals a value needs, when it is first rounded to <paramref name="digits"/> significant digits:
    /// 1 for 2.5, 0 for 13.0.</summary>
    internal static int DecimalsOf(double value, int digits)
    {
        var size = Math.Abs(value);
        if (!(size > 0 && size < Largest))
        {
            return 0;
        }

        var decimals = Math.Clamp(DecimalsFor(size, digits), 0, MostDecimals);
        while (decimals > 0 && Round(size, decimals) == Round(size, decimals - 1))
        {
            decimals--;
        }

        return decimals;
    }

    /// <summary>A value rounded, halves away from zero, and printed to a place.</summary>
    internal static string Text(double value, int decimals)
    {
        if (!(Math.Abs(value) < Largest))
        {
            return double.IsNaN(value) ? "no number" : value.ToString("G6", CultureInfo.InvariantCulture);
        }

        var rounded = Round(value, decimals);
        var text = ((decimal)Math.Abs(rounded)).ToString(
            "F" + Math.Clamp(decimals, 0, MostDecimals).ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture);
        return rounded < 0 ? "−" + text : text;
    }

    // Converting to decimal keeps 15 digits, which takes off the noise of binary fractions before a half is judged.
    private static double Round(double value, int decimals)
    {
        if (!(Math.Abs(value) < Largest))
        {
            return value;
        }

        if (decimals >= 0)
        {
            return (double)Math.Round(
                (decimal)value, Math.Min(decimals, MostDecimals), MidpointRounding.AwayFromZero);
        }

        var scale = Math.Pow(10, Math.Min(-decimals, 20));
        return (double)Math.Round((decimal)(value / scale), MidpointRounding.AwayFromZero) * scale;
    }

    private static int Exponent(double size) => (int)Math.Floor(Math.Log10(size));
}
