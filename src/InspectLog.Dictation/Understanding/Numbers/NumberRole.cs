namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>What a number in a run stands for: a cylinder, a value, or nothing we can use.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it.</param>
/// <param name="Doubt">Why a person should look twice; null where there is nothing to doubt.</param>
internal abstract record NumberRole(int First, int Next, string? Doubt);

/// <summary>Cylinders named by number.</summary>
internal sealed record PlaceNumbers(int First, int Next, IReadOnlyList<int> Cylinders, string? Doubt)
    : NumberRole(First, Next, Doubt);

/// <summary>A value in the base unit of the check it was read for.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it.</param>
/// <param name="Value">The value.</param>
/// <param name="UnitSaid">Whether a unit was said.</param>
/// <param name="Number">The number as said, without its unit.</param>
/// <param name="Doubt">Why a person should look twice.</param>
internal sealed record ValueNumber(int First, int Next, decimal Value, bool UnitSaid, decimal Number, string? Doubt)
    : NumberRole(First, Next, Doubt)
{
    /// <summary>Whether it is one end of a range: "between eight and nine k".</summary>
    public bool RangeEnd { get; init; }

    /// <summary>Whether the words speak of the crankshaft, so that it can only be an angle.</summary>
    public bool AngleSaid { get; init; }
}
