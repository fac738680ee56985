using System.Globalization;

namespace InspectLog.Checks.Derived;

/// <summary>Refuses numbers a formula cannot use, with a message for the person who typed them.</summary>
internal static class Sensible
{
    public static void UnlessAboveZero(double value, string what)
    {
        if (!double.IsFinite(value) || value <= 0)
        {
            throw new ArgumentException($"{what} must be a number above 0.");
        }
    }

    public static void UnlessZeroOrMore(double value, string what)
    {
        if (!double.IsFinite(value) || value < 0)
        {
            throw new ArgumentException($"{what} must be 0 or a number above it.");
        }
    }

    public static void UnlessFinite(double value, string what)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException($"{what} must be a number.");
        }
    }

    public static void UnlessWithin(int value, int from, int to, string what)
    {
        if (value < from || value > to)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{what} must lie within {from} and {to}."));
        }
    }

    public static void CylindersGivenTwice(IEnumerable<int> cylinders)
    {
        var seen = new HashSet<int>();
        foreach (var cylinder in cylinders.Where(cylinder => !seen.Add(cylinder)))
        {
            throw new ArgumentException($"Cylinder {cylinder} is given twice.");
        }
    }
}
