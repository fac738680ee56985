namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>The sorts of choice on the way to a reading of a note.</summary>
internal enum ChoiceKind
{
    /// <summary>How a run of numbers is read.</summary>
    Numbers,

    /// <summary>That nothing is made of an event.</summary>
    Drop,

    /// <summary>What is made of an event.</summary>
    Keep,

    /// <summary>Where it is.</summary>
    Places,
}

/// <summary>What was open to choose from: the features of each way.</summary>
internal sealed record Choice(IReadOnlyList<uint[][]> Options);

/// <summary>A choice that was made on the way to a reading, the last first.</summary>
/// <param name="Kind">What was chosen.</param>
/// <param name="EventKind">The kind of event, as a number; -1 for numbers.</param>
/// <param name="LogProbability">Of what was chosen.</param>
/// <param name="Before">The choice before it.</param>
internal sealed record Decision(ChoiceKind Kind, int EventKind, double LogProbability, Decision? Before)
{
    /// <summary>All there was to choose from; null where nobody learns from it.</summary>
    public Choice? Choice { get; init; }

    /// <summary>Which was chosen.</summary>
    public int Chosen { get; init; }

    /// <summary>The features of what was chosen, but for those of what it follows.</summary>
    public uint[][] Keys { get; init; } = [];

    /// <summary>Where the event begins; -1 for numbers.</summary>
    public int At { get; init; } = -1;
}

/// <summary>A reading of a note, as far as it has come.</summary>
/// <param name="LogProbability">Of all choices on the way.</param>
/// <param name="Found">What was found, the last first.</param>
/// <param name="Skips">The event that belongs to the one before and is passed over; null for none.</param>
/// <param name="Last">The last choice.</param>
internal sealed record ReadingState(double LogProbability, Events.Found? Found, Events.NoteEvent? Skips, Decision? Last);
