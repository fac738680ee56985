namespace InspectLog.Measuring;

/// <summary>A feeler blade or another gauge of fixed size.</summary>
/// <param name="Size">The size marked on it, base unit, above 0.</param>
/// <param name="Tolerance">How far its true size may be from that, ±, base unit, 0 or more.</param>
public readonly record struct Blade(double Size, double Tolerance);

/// <summary>Brackets from feeler blades, one at a time or stacked.</summary>
public static class FeelerBlades
{
    // Of the tolerances: sizes such as 0.075 and 0.065 are apart by a little less or more than 0.01.
    private const double Touching = 1e-9;

    /// <summary>The bracket between a stack that goes and one that does not.</summary>
    /// <remarks>Each blade's size is taken as rectangular within its tolerance and independent of the others. A gap
    /// that is anywhere between the two stacks with equal chance has, with v the variances of the stacks' sizes and c
    /// their covariance from blades in both, the variance width²/12 + (v_goes + v_stops + c)/3; the second part becomes
    /// <see cref="Bracket.GaugeUncertainty"/>. Derived from X = G + V·(S − G) with V even between 0 and 1.</remarks>
    /// <param name="goes">The blades of the largest stack that goes; one or more.</param>
    /// <param name="stops">The blades of the smallest stack that does not; one or more. A blade in both stacks, equal in
    /// size and tolerance, is taken as the same blade.</param>
    /// <exception cref="ArgumentException">A stack is empty, a size or tolerance is out of range, or the stacks are too
    /// close for their tolerances to tell apart.</exception>
    public static Bracket Bracket(IReadOnlyList<Blade> goes, IReadOnlyList<Blade> stops)
    {
        RefuseBadStack(goes);
        RefuseBadStack(stops);
        var onlyStops = stops.ToList();
        var shared = goes.Where(onlyStops.Remove).ToList();
        var onlyGoes = goes.ToList();
        shared.ForEach(blade => onlyGoes.Remove(blade));

        var bracket = new Bracket(goes.Sum(blade => blade.Size), stops.Sum(blade => blade.Size));
        Refuse.BadBracket(bracket);
        var tolerances = onlyGoes.Concat(onlyStops).Sum(blade => blade.Tolerance);
        if (Overlap(bracket.Stops - bracket.Goes, tolerances))
        {
            throw new ArgumentException(
                "The two stacks are so close that their tolerances overlap. Use blades that lie further apart.");
        }

        var variance = (Variance(goes) + Variance(stops) + Variance(shared)) / 3;
        return bracket with
        {
            GaugeUncertainty = Math.Sqrt(variance),
            Tolerances = tolerances > 0 ? tolerances : null,
        };
    }

    /// <summary>The bracket between two stacks of gauges whose sizes are taken as exact. 0 may stand for no gauge at
    /// all.</summary>
    /// <param name="goes">The sizes of the largest stack that goes; one or more.</param>
    /// <param name="stops">The sizes of the smallest stack that does not; one or more.</param>
    /// <exception cref="ArgumentException">A stack is empty, a size is below zero, or they are the wrong way
    /// round.</exception>
    public static Bracket Exact(IReadOnlyList<double> goes, IReadOnlyList<double> stops)
    {
        ArgumentNullException.ThrowIfNull(goes);
        ArgumentNullException.ThrowIfNull(stops);
        if (goes.Count == 0 || stops.Count == 0)
        {
            throw new ArgumentException("Name at least one blade.");
        }

        Refuse.GaugesBelowZero(goes.Concat(stops));
        var bracket = new Bracket(goes.Sum(), stops.Sum());
        Refuse.BadBracket(bracket);
        return bracket;
    }

    /// <summary>Whether two stacks are too close to be told apart; those whose tolerances just touch are.</summary>
    internal static bool Overlap(double apart, double tolerances) => tolerances > 0 && apart <= tolerances * (1 + Touching);

    private static double Variance(IReadOnlyList<Blade> stack) => stack.Sum(blade => blade.Tolerance * blade.Tolerance) / 3;

    private static void RefuseBadStack(IReadOnlyList<Blade> stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        if (stack.Count == 0)
        {
            throw new ArgumentException("Name at least one blade.");
        }

        if (stack.Any(blade => !(blade.Size > 0 && double.IsFinite(blade.Size))))
        {
            throw new ArgumentException("The size of a blade must be above 0.");
        }

        if (stack.Any(blade => !(blade.Tolerance >= 0 && blade.Tolerance < blade.Size)))
        {
            throw new ArgumentException("The tolerance of a blade must be 0 or more, and less than its size.");
        }
    }
}
