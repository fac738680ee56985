using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>One line of a sheet: measured or observed, once or per cylinder.</summary>
public sealed record Check
{
    /// <summary>Identifier within the sheet, such as <c>coil-secondary-resistance</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people: "Coil secondary resistance".</summary>
    public required string Title { get; init; }

    /// <summary>A shorter name for lists: "Coil secondary".</summary>
    public required string ShortTitle { get; init; }

    /// <summary>What it measures or asks, in one sentence.</summary>
    public required string Question { get; init; }

    /// <summary>The places it is done at; null for a check done once. Records name a place by its number, which for a lead, a
    /// plug or a tower is that of the cylinder it serves.</summary>
    public CheckPlaces? Places { get; init; }

    /// <summary>What each place is called: null for a check done once; "cylinder", "lead", "wheel" for others.</summary>
    public string? PlaceNoun => Places?.Noun;

    /// <summary>Whether the check is done at several places: once per cylinder, or at each place of its own.</summary>
    public bool PerCylinder => Places is not null;

    /// <summary>The parts it is about, in the sheet's order of naming; empty in sheets from before they named parts.
    /// Checks with the same part share what was taken off and put back.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>What is measured; null for a check that is only observed.</summary>
    public Measurand? Measurand { get; init; }

    /// <summary>The condition words an observation may use; empty where only values count.</summary>
    public required IReadOnlyList<Condition> Conditions { get; init; }

    /// <summary>The actions that make sense here: replaced, cleaned, adjusted, disconnected, reconnected.</summary>
    public required IReadOnlyList<string> Actions { get; init; }

    /// <summary>How to do it, step by step, in our words.</summary>
    public required IReadOnlyList<string> Method { get; init; }

    /// <summary>The state the car has to be in before anything is touched.</summary>
    public required IReadOnlyList<string> SafeState { get; init; }

    /// <summary>Parts taken off or things switched on for this check, to be put right afterwards.</summary>
    public required IReadOnlyList<Disturbance> Disturbs { get; init; }

    /// <summary>What can hurt.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>How soon what fails in it is to be seen to; null where the sheet leaves that to people. What needs a look only is a
    /// step less urgent.</summary>
    public Urgency? Urgency { get; init; }

    /// <summary>The words people say for this check and its parts, used to read dictation.</summary>
    public required SpokenNames Spoken { get; init; }
}

/// <summary>What a measured check measures.</summary>
/// <param name="Kind">Kind of quantity; values are stored in its base unit.</param>
/// <param name="DisplayUnit">Unit shown to people.</param>
/// <param name="Limits">Default tolerance limits, base unit; null where only the vehicle's manual can say.</param>
/// <param name="Nominal">Target value, base unit; null where there is none.</param>
/// <param name="LimitSource">Where the limits come from: a published source, or "common practice, no source".</param>
/// <param name="Plausible">Span of values, base unit; outside of it a number is taken as misheard or mistyped.</param>
/// <param name="Gauge">Whether a go/no-go gauge bracket is a usual way to measure it.</param>
public sealed record Measurand(
    QuantityKind Kind,
    Unit DisplayUnit,
    Limits? Limits,
    double? Nominal,
    string LimitSource,
    PlausibleSpan Plausible,
    bool Gauge)
{
    /// <summary>Whether it is the resistance of a copper winding, which goes with temperature and is compared at
    /// 20 °C.</summary>
    public bool IsCopperWinding { get; init; }

    /// <summary>How readings are decided where another check was read as well; null where always by themselves.</summary>
    public Comparison? DecidedBy { get; init; }
}

/// <summary>A condition word of a check and what it means for the check.</summary>
/// <param name="Id">The word used in records: <c>burnt</c>, <c>open circuit</c>.</param>
/// <param name="Meaning">What it says of the part.</param>
/// <param name="Phrases">Other words people use for it.</param>
public sealed record Condition(string Id, ConditionMeaning Meaning, IReadOnlyList<string> Phrases);

/// <summary>What a condition says of the part, where it is present. A negated condition says the opposite of
/// <see cref="Good"/>, and nothing of the others.</summary>
public enum ConditionMeaning
{
    /// <summary>The part is as it should be.</summary>
    Good,

    /// <summary>The part works but needs attention.</summary>
    Attention,

    /// <summary>The part has failed its check.</summary>
    Bad,
}

/// <summary>Something a check leaves disconnected, removed or switched on.</summary>
/// <param name="Id">Identifier within the sheet, such as <c>coil-lead</c>.</param>
/// <param name="Text">What is left undone: "Coil lead off the cap".</param>
/// <param name="Tie">What puts it right: "Put the coil lead back on the cap".</param>
public sealed record Disturbance(string Id, string Text, string Tie)
{
    /// <summary>The part that is taken off or switched on; null in sheets from before they named parts.</summary>
    public Part? Part { get; init; }

    /// <summary>How long it may stay so; null where it does no harm.</summary>
    public TimeLimit? Limit { get; init; }
}

/// <summary>How people name a check when they speak.</summary>
/// <param name="Subjects">Phrases that name the measured quantity or the part: "coil secondary", "plug gap".</param>
/// <param name="Parts">Nouns of the part that also belong to other checks: "lead", "plug"; with a number and a
/// fitting value, unit, condition or action they are enough.</param>
/// <param name="MainForActions">Whether an action on the part is recorded on this check.</param>
public sealed record SpokenNames(
    IReadOnlyList<string> Subjects,
    IReadOnlyList<string> Parts,
    bool MainForActions);
