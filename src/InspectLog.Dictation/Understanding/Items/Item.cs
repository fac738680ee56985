using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>A stretch of tokens with one meaning in the sentence.</summary>
/// <param name="First">The first token.</param>
/// <param name="Next">The token after the last.</param>
/// <param name="Role">What it does, where it is an everyday word.</param>
internal sealed record Item(int First, int Next, Role Role)
{
    /// <summary>Whether it names a part or a quantity.</summary>
    public bool Subject { get; init; }

    /// <summary>The conditions it can mean.</summary>
    public IReadOnlyList<ConditionTerm> Conditions { get; init; } = [];

    /// <summary>What it can say was done, the most demanding first.</summary>
    public IReadOnlyList<ActionTerm> Actions { get; init; } = [];

    /// <summary>Whether it is a run of numbers and units.</summary>
    public bool Number { get; init; }

    /// <summary>The cylinder it names without doubt: "third".</summary>
    public int? Ordinal { get; init; }

    /// <summary>The cylinders it names together: "the first three".</summary>
    public CylinderGroup? Group { get; init; }

    /// <summary>Why a person should look twice at what comes of it.</summary>
    public string? Doubt { get; init; }

    /// <summary>Whether the speaker said that it is not so yet, or not of this car: a plan, a question, a limit.</summary>
    public bool Blocked { get; init; }

    /// <summary>The tokens of the small words that belong to this item though others stand between: "off" in "pulled
    /// the lead off".</summary>
    public (int First, int Next)? Particle { get; init; }

    public bool Condition => Conditions.Count > 0 || Role == Role.Good;

    /// <summary>What it was taken for, as far as it matters to what may be misheard.</summary>
    public WordReading Word => this switch
    {
        { Blocked: true } or { Role: Role.OtherPart } => WordReading.Aside,
        { Number: true } or { Ordinal: not null } or { Group: not null } => WordReading.Number,
        { Condition: true } or { Actions.Count: > 0 } => WordReading.Predicate,
        { Role: Role.PlaceMark } => WordReading.Tie,
        { Subject: true } => WordReading.Name,
        { Role: Role.Unknown } => WordReading.Unknown,
        { Role: Role.Filler or Role.Person or Role.Preposition } => WordReading.Small,
        _ => WordReading.Tie,
    };
}
