namespace InspectLog.Measuring.Tests;

/// <summary>Comparisons that say how close is close enough.</summary>
internal static class Close
{
    /// <summary>Equal to the number of significant digits of a printed figure.</summary>
    internal static void ToDigits(double expected, double actual, int digits)
    {
        var tolerance = Math.Abs(expected) * 0.5 * Math.Pow(10, 1 - digits);
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            $"expected {expected:R} to {digits} digits, got {actual:R}");
    }

    /// <summary>Equal once rounded to the decimals a source prints.</summary>
    internal static void ToDecimals(double expected, double actual, int decimals) =>
        Assert.True(
            Math.Abs(actual - expected) <= (0.5 * Math.Pow(10, -decimals)) + 1e-12,
            $"expected {expected:R} to {decimals} decimals, got {actual:R}");
}
