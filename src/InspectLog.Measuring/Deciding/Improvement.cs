namespace InspectLog.Measuring;

/// <summary>Something that can be done, and what it would bring.</summary>
/// <param name="Action">What to do, as the middle of a sentence: "use the 20 kΩ range".</param>
/// <param name="ExpandedUncertainty">What the expanded uncertainty would come down to, base unit.</param>
public sealed record Improvement(string Action, double ExpandedUncertainty)
{
    /// <summary>Whether that would be enough for a clear answer, if the value stays where it is.</summary>
    public bool Settles(Advice advice) => ExpandedUncertainty <= advice.UncertaintyNeeded;
}
