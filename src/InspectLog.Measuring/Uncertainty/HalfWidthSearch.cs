namespace InspectLog.Measuring;

/// <summary>Finds the place above which a given share of a distribution lies.</summary>
internal static class HalfWidthSearch
{
    private const int MostSteps = 100;

    // The error goes with the square of the step before, and where a box has hardly any shoulders with some ten thousand times
    // that.
    private const double Enough = 1e-8;

    /// <summary>Newton's method on the logarithms of tail and place, kept between two bounds.</summary>
    /// <param name="distribution">The distribution; it has a density everywhere.</param>
    /// <param name="spreads">Its two t put together.</param>
    /// <param name="tail">The share above the place, above 0 and below ½.</param>
    /// <param name="about">A place to start from.</param>
    /// <param name="noMoreThan">A place with no more than that above it.</param>
    internal static double Of(
        in MeasurandDistribution distribution, SpreadNodes spreads, double tail, double about, double noMoreThan)
    {
        var (low, high) = (0.0, noMoreThan);
        var x = about < noMoreThan ? about : noMoreThan / 2;
        for (var step = 0; step < MostSteps; step++)
        {
            var (above, density) = distribution.Tail(x, spreads);
            (low, high) = above > tail ? (x, high) : (low, x);
            var next = x * Math.Exp(Math.Log(above / tail) * above / (x * density));
            if (Math.Abs(next - x) <= Enough * x)
            {
                return next;
            }

            x = next > low && next < high ? next : (low + high) / 2;
        }

        return x;
    }
}
