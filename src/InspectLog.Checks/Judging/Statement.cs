namespace InspectLog.Checks.Judging;

/// <summary>Something recorded on an observed check, in the order it was said.</summary>
/// <param name="Cylinder">The place it is about; null when it is about the part as a whole.</param>
public abstract record Statement(int? Cylinder);

/// <summary>A condition was seen, or seen to be absent.</summary>
/// <param name="Cylinder">The place, or null for the whole.</param>
/// <param name="Condition">A condition word of the check.</param>
/// <param name="Negated">Whether it was said to be absent.</param>
public sealed record Observed(int? Cylinder, string Condition, bool Negated = false) : Statement(Cylinder);

/// <summary>Something was done to the part.</summary>
/// <param name="Cylinder">The place, or null for the whole.</param>
/// <param name="Action">One of <see cref="PartActions"/>.</param>
public sealed record Done(int? Cylinder, string Action) : Statement(Cylinder);
