namespace InspectLog.Checks.Derived;

/// <summary>How far the lowest cylinder may lie below the highest.</summary>
public sealed record BalanceRule
{
    /// <summary>States a rule.</summary>
    /// <param name="leastShare">Least share of the highest value that the lowest may be, above 0 and up to 1.</param>
    /// <param name="source">Where the rule comes from.</param>
    /// <exception cref="ArgumentException">The share is out of range, or no source is stated.</exception>
    public BalanceRule(double leastShare, string source)
    {
        if (!(leastShare > 0 && leastShare <= 1))
        {
            throw new ArgumentException("The least share must lie above 0 and be at most 1 (0.75 for 75 %).");
        }

        if (string.IsNullOrWhiteSpace(source))
        {
            throw new ArgumentException("Say where this rule comes from, such as the manual and its page.");
        }

        (LeastShare, Source) = (leastShare, source.Trim());
    }

    /// <summary>Rules for compression to choose from. They differ from maker to maker: the vehicle's manual wins.</summary>
    public static IReadOnlyList<BalanceRule> Compression { get; } =
    [
        new(0.75, "Vehicle service manuals of 1992, 1997 and 2012"),
        new(0.70, "One vehicle's service manual of 2006, which also asks for at least 690 kPa"),
    ];

    /// <summary>Least share of the highest value that the lowest may be; the share itself is allowed.</summary>
    public double LeastShare { get; }

    /// <summary>Where the rule comes from.</summary>
    public string Source { get; }
}
