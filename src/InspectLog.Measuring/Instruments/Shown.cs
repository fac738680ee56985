namespace InspectLog.Measuring;

/// <summary>Whether an instrument can have shown the values that are said to be read off it. Exactly one of the three
/// kinds.</summary>
public abstract record Shown
{
    private Shown()
    {
    }

    /// <summary>It can show them as they are.</summary>
    public sealed record Plainly : Shown;

    /// <summary>One or more values lie between two steps of its display, so that somebody has to say what it showed.</summary>
    /// <param name="Question">What to ask, in one sentence.</param>
    /// <param name="Choices">What the display may have shown instead, base unit, each with as many values as were given.
    /// The two steps on either side where one value lies between steps; none where several do, since then they are
    /// better typed anew.</param>
    public sealed record BetweenSteps(string Question, IReadOnlyList<IReadOnlyList<double>> Choices) : Shown;

    /// <summary>No display of this instrument reads so.</summary>
    /// <param name="Problem">What is wrong, in one or two sentences.</param>
    /// <param name="IsBeyondRange">Whether a larger range or another instrument could show them.</param>
    public sealed record Never(string Problem, bool IsBeyondRange) : Shown;

    /// <summary>Judges values against an instrument.</summary>
    /// <param name="instrument">The instrument, on the range it is read on; one that chooses its range itself shows what
    /// any of its ranges shows.</param>
    /// <param name="values">The values, each with the unit it was given in; repeats are several.</param>
    /// <param name="judgeSteps">Whether its step is known. Where it is only assumed, no value lies between steps.</param>
    public static Shown By(Instrument instrument, IReadOnlyList<TypedNumber.Certain> values, bool judgeSteps = true)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentNullException.ThrowIfNull(values);
        return DisplayRules.Impossible(instrument, values)
            ?? DisplayRules.Beyond(instrument, values)
            ?? (judgeSteps ? DisplaySteps.Between(instrument, values) : null)
            ?? (Shown)new Plainly();
    }
}
