namespace InspectLog.Measuring;

/// <summary>What would make a conditional answer sure, by the non-binary rule.</summary>
/// <param name="UncertaintyNeeded">The largest expanded uncertainty with which this value would be a clear pass or fail,
/// base unit: its distance from the nearer limit. 0 for a value on the limit, which nothing makes clear.</param>
/// <param name="ReadingsNeeded">How many readings in all would do, if the next ones scatter as the first; null where no
/// sensible number does, or where a single reading and nothing before it say nothing of the scatter.</param>
/// <param name="AccuracyNeeded">The instrument accuracy, ± in the base unit at this value, that would do with everything
/// else as it is; null where none does.</param>
/// <param name="Improvements">What can be done with the means at hand, best first; empty where nothing helps.</param>
public sealed record Advice(
    double UncertaintyNeeded,
    int? ReadingsNeeded,
    double? AccuracyNeeded,
    IReadOnlyList<Improvement> Improvements)
{
    // An improvement of less than a twentieth is not worth a sentence.
    private const double WorthSaying = 0.95;

    // Halvings that leave no more of an accuracy than anybody states.
    private const int Halvings = 40;

    /// <summary>Works out advice for a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="limits">The limits it is decided against.</param>
    /// <param name="instrument">The instrument it was taken with, for its other ranges; null where unknown.</param>
    /// <param name="evaluation">How the expanded uncertainty is found; null for the usual way.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why.</exception>
    public static Advice For(Reading reading, Limits limits, Instrument? instrument = null, Evaluation? evaluation = null)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var estimate = Estimate.Of(reading, evaluation);
        var needed = Math.Abs(Zones.Inside(estimate.Value, limits));
        return reading switch
        {
            DisplayedReading displayed => For(displayed, estimate, needed, instrument),
            Bracket bracket => new(needed, null, null, WorthDoing(estimate, Measuring.Improvements.Of(bracket))),
            _ => new(needed, null, null, []),
        };
    }

    /// <summary>Works out how small the uncertainty would have to be, for a value of which nothing more is known.</summary>
    public static Advice For(in Estimate estimate, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return new(Math.Abs(Zones.Inside(estimate.Value, limits)), null, null, []);
    }

    private static Advice For(DisplayedReading reading, Estimate estimate, double needed, Instrument? instrument)
    {
        var readings = ReadingsFor(reading, estimate, needed);
        return new(
            needed,
            readings,
            AccuracyFor(estimate, needed) / (reading.Winding?.Factor ?? 1),
            WorthDoing(estimate, Measuring.Improvements.Of(reading, readings, instrument)));
    }

    private static Improvement[] WorthDoing(Estimate now, IEnumerable<(string Action, Reading Then)> improvements) =>
    [
        .. improvements
            .Select(one => new Improvement(one.Action, Estimate.Of(one.Then, now.Evaluation).ExpandedUncertainty))
            .Where(improvement => improvement.ExpandedUncertainty < WorthSaying * now.ExpandedUncertainty)
            .OrderBy(improvement => improvement.ExpandedUncertainty),
    ];

    private static int? ReadingsFor(DisplayedReading reading, in Estimate estimate, double needed)
    {
        if (estimate.ExpandedUncertainty <= needed)
        {
            return reading.Values.Count;
        }

        for (var count = reading.Values.Count + 1; Measuring.Improvements.SaysScatter(reading) && count <= Measuring.Improvements.MostReadings; count++)
        {
            var more = Measuring.Improvements.WithReadings(reading, count);
            if (Estimate.Of(more, estimate.Evaluation).ExpandedUncertainty <= needed)
            {
                return count;
            }
        }

        return null;
    }

    // Searched between nothing and twice what is needed, which is too much: the middle part of a box is more than half of it.
    private static double? AccuracyFor(in Estimate estimate, double needed)
    {
        // Every displayed reading has this line.
        var line = estimate.Contributions.Index().First(one => one.Item.Name == ContributionNames.Accuracy).Index;
        if (Changed.Expanded(estimate, line, 0, double.PositiveInfinity) > needed)
        {
            return null;
        }

        var (enough, tooMuch) = (0.0, 2 * needed);
        for (var i = 0; i < Halvings; i++)
        {
            var between = (enough + tooMuch) / 2;
            (enough, tooMuch) = Changed.Expanded(estimate, line, Budget.Rectangular(between), double.PositiveInfinity) <= needed
                ? (between, tooMuch)
                : (enough, between);
        }

        return enough;
    }
}
