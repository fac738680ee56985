using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Standing;

/// <summary>How far a check has come. The words on screen are not done, captured, decided, left out.</summary>
public enum CheckStanding
{
    /// <summary>Nothing is recorded.</summary>
    NotDone,

    /// <summary>Some of its places have a record.</summary>
    Captured,

    /// <summary>Each of its places has a record.</summary>
    Decided,

    /// <summary>It is left out, for a reason.</summary>
    LeftOut,
}

/// <summary>What a place of a check says, the worse of its reading and its observations.</summary>
public enum PlaceOutcome
{
    /// <summary>Nothing recorded.</summary>
    None,

    /// <summary>Recorded, but there are no limits or judgement to say good or bad.</summary>
    Recorded,

    /// <summary>In order.</summary>
    Good,

    /// <summary>Needs attention, or cannot be told for sure.</summary>
    Doubtful,

    /// <summary>Not in order.</summary>
    Bad,
}

/// <summary>One place of a check: a cylinder, a lead, or the check itself where it is done once.</summary>
/// <param name="Cylinder">Cylinder number; null for a check done once.</param>
/// <param name="Name">"Lead 4"; the check's short title where it is done once.</param>
/// <param name="Reading">The reading that counts: the last one.</param>
/// <param name="Observations">What was seen.</param>
/// <param name="Actions">What was done.</param>
/// <param name="Outcome">What they say together.</param>
/// <param name="Word">The same in a word or two: "pass", "chafed", "not done".</param>
public sealed record PlaceView(
    int? Cylinder,
    string Name,
    Recorded<ReadingDecided>? Reading,
    IReadOnlyList<Recorded<ObservationMade>> Observations,
    IReadOnlyList<Recorded<ActionDone>> Actions,
    PlaceOutcome Outcome,
    string Word)
{
    /// <summary>Whether anything is recorded of it.</summary>
    public bool IsDone => Outcome != PlaceOutcome.None;

    /// <summary>Whether it needs a look because its reading lies too close to a limit to be sure of.</summary>
    public bool IsConditional => Outcome == PlaceOutcome.Doubtful
        && Reading?.Body.Conformity?.Decision.IsUnclear() == true;

    /// <summary>The readings before the one that counts, as before something was adjusted.</summary>
    public IReadOnlyList<Recorded<ReadingDecided>> EarlierReadings { get; init; } = [];
}

/// <summary>Where a check stands in an inspection.</summary>
/// <param name="Standing">How far it has come.</param>
/// <param name="Outcome">The worst of its places.</param>
/// <param name="Word">The same in a word or two for the list of checks: "4 of 6", "conditional pass".</param>
/// <param name="Places">Its places, in cylinder order.</param>
/// <param name="OpenProposals">Proposals for it that nobody has settled; those settled together count as one.</param>
public sealed record CheckProgress(
    CheckStanding Standing,
    PlaceOutcome Outcome,
    string Word,
    IReadOnlyList<PlaceView> Places,
    int OpenProposals)
{
    /// <summary>Whether something of it is neither done nor left out.</summary>
    public bool IsToDo => Standing is CheckStanding.NotDone or CheckStanding.Captured;

    /// <summary>Whether nothing of it failed, and a reading of it lies too close to a limit to be sure of.</summary>
    public bool IsConditional => Outcome == PlaceOutcome.Doubtful && Places.Any(place => place.IsConditional);
}
