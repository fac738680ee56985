namespace InspectLog.Checks;

/// <summary>How long a check may leave something as it is.</summary>
/// <param name="Longest">The longest time, above zero and at most <see cref="MostMinutes"/>.</param>
/// <param name="Because">What happens after it, in a sentence.</param>
/// <param name="Source">Where the limit comes from: a published source, or "Common practice, no source".</param>
public sealed record TimeLimit(TimeSpan Longest, string Because, string Source)
{
    /// <summary>What takes longer than this many minutes is looked after otherwise than beside the car.</summary>
    public const int MostMinutes = 600;
}
