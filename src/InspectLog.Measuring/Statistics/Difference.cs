namespace InspectLog.Measuring;

/// <summary>Differences of readings that hardly differ.</summary>
/// <remarks>Readings are decimal numbers, and the double nearest to 10000000.2 is off by two in its ninth decimal: that
/// is the sixth digit of a spread of 0.1. A decimal made of a double takes its first fifteen digits, which gives back the
/// number that was read; so close differences are taken in decimal. With it the data sets of NIST's StRD made to show
/// this fault (NumAcc4, SmLs07 to SmLs09) come out in full.</remarks>
internal static class Difference
{
    // Where less than this is left of a number, its own rounding shows. Elsewhere binary is the more exact of the two.
    private const double Close = 1e-3;

    // Within these bounds a decimal holds fifteen digits.
    private const double Smallest = 1e-9;
    private const double Largest = 1e15;

    internal static double Of(double value, double origin)
    {
        var difference = value - origin;
        var size = Math.Abs(origin);
        return difference != 0 && Math.Abs(difference) < Close * size && size is >= Smallest and <= Largest
            ? (double)((decimal)value - (decimal)origin)
            : difference;
    }
}
