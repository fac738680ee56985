using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Something said of a subject.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it.</param>
internal abstract record Predicate(int First, int Next)
{
    /// <summary>Why a person should look twice.</summary>
    public string? Doubt { get; init; }
}

/// <summary>A value was read off.</summary>
internal sealed record ValueSaid(int First, int Next, Check Check, ValueNumber Value) : Predicate(First, Next)
{
    /// <summary>Whether a gauge of this size goes; null where no gauge was spoken of.</summary>
    public bool? Goes { get; init; }

    /// <summary>Whether only the unit tells which check it belongs to.</summary>
    public bool Nameless { get; init; }
}

/// <summary>A condition was seen, or seen to be absent.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it.</param>
/// <param name="Terms">The conditions the words can mean.</param>
/// <param name="Good">Whether the words mean "as it should be" of any part.</param>
/// <param name="Negated">Whether it was said to be absent.</param>
internal sealed record ConditionSaid(int First, int Next, IReadOnlyList<ConditionTerm> Terms, bool Good, bool Negated)
    : Predicate(First, Next)
{
    /// <summary>Whether the word also names the part ("spark"), so that it says something only if nothing else does.
    /// </summary>
    public bool Naming { get; init; }
}

/// <summary>"Nothing", "none", "no": what was looked for is absent. "Yes": it is there.</summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it.</param>
/// <param name="Absent">Whether it is absent.</param>
internal sealed record PresenceSaid(int First, int Next, bool Absent) : Predicate(First, Next);

/// <summary>Something was done.</summary>
internal sealed record ActionDone(int First, int Next, string Action) : Predicate(First, Next);
