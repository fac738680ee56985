namespace InspectLog.Dictation.Understanding;

/// <summary>Something a text seems to say about the inspection. Proposed until a person confirms it.</summary>
/// <param name="Kind">What sort of finding.</param>
/// <param name="Check">Id of the check of the sheet.</param>
/// <param name="Place">The cylinder, for checks done per cylinder; else null.</param>
/// <param name="Value">For a reading: the value in the check's base unit; null with a bracket.</param>
/// <param name="Unit">For a reading: symbol of the check's base unit.</param>
/// <param name="Bracket">For a reading taken with gauges: the bracket, base unit.</param>
/// <param name="Condition">For an observation: the sheet's condition word.</param>
/// <param name="Negated">For an observation: whether the condition was said to be absent.</param>
/// <param name="Action">For an action: replaced, cleaned, adjusted, disconnected, reconnected.</param>
/// <param name="Words">The words it came from.</param>
/// <param name="Start">Position in the text of the first character of <paramref name="Words"/>.</param>
/// <param name="End">Position in the text after the last character of <paramref name="Words"/>.</param>
/// <param name="Doubts">Why a person should look twice; empty where nothing is in doubt.</param>
public sealed record Finding(
    FindingKind Kind,
    string Check,
    Place? Place,
    double? Value,
    string? Unit,
    GaugeBracket? Bracket,
    string? Condition,
    bool Negated,
    string? Action,
    string Words,
    int Start,
    int End,
    DoubtList Doubts)
{
    /// <summary>Whether nothing is in doubt.</summary>
    public bool IsPlain => Doubts.IsEmpty;
}

/// <summary>The sorts of finding.</summary>
public enum FindingKind
{
    /// <summary>A measured value or bracket.</summary>
    Reading,

    /// <summary>A condition seen, or seen to be absent.</summary>
    Observation,

    /// <summary>Something that was done.</summary>
    Action,
}

/// <summary>A place on the engine, named by the cylinder it serves.</summary>
/// <param name="Cylinder">Cylinder number, from 1.</param>
public sealed record Place(int Cylinder);

/// <summary>A bracket between two gauges, in the check's base unit.</summary>
/// <param name="Goes">The largest gauge that goes.</param>
/// <param name="Stops">The smallest that does not.</param>
public sealed record GaugeBracket(double Goes, double Stops);
