namespace InspectLog.Measuring;

/// <summary>How far single readings scatter, found from earlier repeats: of the same thing, read in the same way with the
/// same instrument (a pooled standard deviation: JCGM 100:2008, 4.2.4; EA-4/02, 3.2).</summary>
/// <param name="StandardDeviation">Standard deviation of one reading, base unit, 0 or more.</param>
/// <param name="DegreesOfFreedom">What it was found from, 1 or more; null where it is taken as known.</param>
public sealed record KnownScatter(double StandardDeviation, double? DegreesOfFreedom)
{
    /// <summary>Where it comes from, in words; null where nothing is said.</summary>
    public string? From { get; init; }

    /// <summary>Pools the scatter of groups of repeats about their own means; null where none has two.</summary>
    public static KnownScatter? Pool(IEnumerable<IReadOnlyList<double>> repeats)
    {
        ArgumentNullException.ThrowIfNull(repeats);
        var (squares, degrees) = (0.0, 0);
        foreach (var sample in repeats.Where(values => values.Count > 1).Select(Sample.Of))
        {
            squares += (sample.Count - 1) * sample.StandardDeviation * sample.StandardDeviation;
            degrees += sample.Count - 1;
        }

        return degrees > 0 ? new(Math.Sqrt(squares / degrees), degrees) : null;
    }
}
