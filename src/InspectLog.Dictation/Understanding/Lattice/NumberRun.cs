using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>What a number is.</summary>
internal enum NumberRole
{
    /// <summary>It names a place.</summary>
    Place,

    /// <summary>It is a measured value.</summary>
    Value,

    /// <summary>Something else: a count, a price, a time.</summary>
    Other,
}

/// <summary>A number with its unit, read in one way.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it and its unit.</param>
/// <param name="Value">The number.</param>
/// <param name="Form">How it was said.</param>
/// <param name="Units">What the unit said can mean; null where none was said.</param>
/// <param name="Role">What the number is.</param>
internal sealed record NumberSegment(int First, int Next, double Value, NumberForm Form, IReadOnlyList<SpokenUnit>? Units, NumberRole Role);

/// <summary>Number words next to each other, and every way to cut and read them.</summary>
internal sealed record NumberRun(int First, int Next, IReadOnlyList<NumberSegment[]> Options);
