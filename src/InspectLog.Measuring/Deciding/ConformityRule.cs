namespace InspectLog.Measuring;

/// <summary>Decides readings against limits.</summary>
public static class ConformityRule
{
    /// <summary>Decides a reading by the non-binary rule of ILAC-G8:09/2019.</summary>
    /// <remarks>
    /// <para>A displayed reading is the mean of its repeats. Its uncertainty combines the instrument's accuracy
    /// (rectangular), the display step (rectangular, half a step each way) and, with two repeats or more, their spread
    /// s/√n with n − 1 degrees of freedom. The probability of conformity comes from a normal density with that standard
    /// uncertainty (JCGM 106:2012, 7.2 to 7.4).</para>
    /// <para>A bracket is a box between its gauges. Its expanded uncertainty is the half-width of the box's middle
    /// 95.45 %, so it passes when no more than 2.3 % of the box lies beyond a limit: the same risk the guard band of two
    /// standard uncertainties leaves a displayed reading. The probability of conformity is the share of the box within
    /// the limits.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The reading has no value, a value that is not finite, a negative accuracy,
    /// a resolution of 0 or less, or a bracket whose gauges are the wrong way round.</exception>
    public static Conformity Decide(Reading reading, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(limits);
        return reading switch
        {
            DisplayedReading displayed => DecideDisplayed(displayed, limits),
            Bracket bracket => DecideBracket(bracket, limits),
            _ => throw new ArgumentException($"There is no rule for a reading of type {reading.GetType().Name}."),
        };
    }

    private static Conformity DecideDisplayed(DisplayedReading reading, Limits limits)
    {
        Refuse.BadInstrument(reading.Accuracy, reading.Resolution);
        var sample = Sample.Of(reading.Values);
        var contributions = Contributions(reading, sample);
        var u = Budget.Combined(contributions);
        if (!double.IsFinite(u))
        {
            throw new ArgumentException("The values are too large to work with.");
        }

        var k = Coverage.Factor(Budget.EffectiveDegreesOfFreedom(contributions, u));
        return Conclude(sample.Mean, u, k, NormalShareWithin(limits, sample.Mean, u), contributions, limits);
    }

    private static Conformity DecideBracket(Bracket bracket, Limits limits)
    {
        Refuse.BadBracket(bracket);
        var width = bracket.Stops - bracket.Goes;
        var u = Budget.Rectangular(width / 2);
        Contribution[] contributions = [new("gap between the gauges", u, double.PositiveInfinity)];
        return Conclude(
            bracket.Goes + (width / 2), u, Coverage.BoxFactor, BoxShareWithin(limits, bracket), contributions, limits);
    }

    private static Conformity Conclude(
        double value, double u, double k, double probability, Contribution[] contributions, Limits limits)
    {
        var expanded = k * u;
        return new Conformity(
            value, u, expanded, k, probability, Zones.Decide(value, limits, expanded), contributions)
        {
            AcceptanceZoneIsEmpty = Zones.AcceptanceIsEmpty(limits, expanded),
        };
    }

    private static Contribution[] Contributions(DisplayedReading reading, in Sample sample)
    {
        var accuracy = new Contribution(
            "instrument accuracy",
            Budget.Rectangular(reading.Accuracy.HalfWidth(sample.Mean, reading.Resolution)),
            double.PositiveInfinity);
        var display = new Contribution(
            "display step", Budget.Rectangular(reading.Resolution / 2), double.PositiveInfinity);
        Contribution[] contributions = sample.Count == 1
            ? [accuracy, display]
            : [accuracy, display, new("spread of the repeats", sample.StandardDeviationOfMean, sample.Count - 1)];
        LargestFirst(contributions);
        return contributions;
    }

    // By hand because there are two or three, and Array.Sort would allocate for its comparison.
    private static void LargestFirst(Contribution[] contributions)
    {
        for (var i = 1; i < contributions.Length; i++)
        {
            for (var j = i; j > 0
                 && contributions[j].StandardUncertainty > contributions[j - 1].StandardUncertainty; j--)
            {
                (contributions[j], contributions[j - 1]) = (contributions[j - 1], contributions[j]);
            }
        }
    }

    private static double NormalShareWithin(Limits limits, double value, double u)
    {
        if (u == 0)
        {
            return Zones.Decide(value, limits, 0) == Decision.Pass ? 1 : 0;
        }

        var from = limits.Lower is { } lower ? (lower - value) / u : double.NegativeInfinity;
        var to = limits.Upper is { } upper ? (upper - value) / u : double.PositiveInfinity;
        return NormalDistribution.Between(from, to);
    }

    private static double BoxShareWithin(Limits limits, Bracket bracket)
    {
        var from = Math.Max(bracket.Goes, limits.Lower ?? bracket.Goes);
        var to = Math.Min(bracket.Stops, limits.Upper ?? bracket.Stops);
        return Math.Clamp((to - from) / (bracket.Stops - bracket.Goes), 0, 1);
    }
}
