namespace InspectLog.Measuring;

/// <summary>The tolerance limits a value is decided against (JCGM 106:2012, 3.3.4), in the base unit of its kind.
/// One of the two may be absent.</summary>
public sealed record Limits
{
    private Limits(double? lower, double? upper)
    {
        Lower = lower;
        Upper = upper;
    }

    /// <summary>Lower tolerance limit, inclusive; null where there is none.</summary>
    public double? Lower { get; }

    /// <summary>Upper tolerance limit, inclusive; null where there is none.</summary>
    public double? Upper { get; }

    /// <summary>Limits from one or two finite numbers.</summary>
    /// <exception cref="ArgumentException">Both are absent, one is not finite, or the upper lies at or below the
    /// lower. The message is written for the person who typed them.</exception>
    public static Limits Of(double? lower, double? upper)
    {
        if (lower is null && upper is null)
        {
            throw new ArgumentException("Give a lower limit, an upper limit, or both.");
        }

        if (lower is { } l && !double.IsFinite(l) || upper is { } u && !double.IsFinite(u))
        {
            throw new ArgumentException("A limit must be a finite number.");
        }

        if (lower >= upper)
        {
            throw new ArgumentException("The upper limit must lie above the lower limit.");
        }

        return new Limits(lower, upper);
    }
}
