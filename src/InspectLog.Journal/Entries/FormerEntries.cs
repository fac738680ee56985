using InspectLog.Doubts;

namespace InspectLog.Journal.Entries;

/// <summary>A body of a former version: read, and no longer written.</summary>
internal interface IFormerBody
{
    /// <summary>The same in the version that is written now.</summary>
    EntryBody Today();
}

/// <summary><see cref="FindingsProposed"/> when a doubt was a sentence.</summary>
[EntryKind("findings-proposed")]
internal sealed record WordedFindingsProposed(long Recording, IReadOnlyList<WordedFinding> Findings) : EntryBody, IFormerBody
{
    /// <inheritdoc/>
    public EntryBody Today() => new FindingsProposed(Recording, [.. Findings.Select(finding => finding.WithKinds())]);
}

/// <summary><see cref="ProposedFinding"/> when a doubt was a sentence.</summary>
internal sealed record WordedFinding(
    string Kind,
    string Check,
    int? Cylinder,
    double? Value,
    double? Goes,
    double? Stops,
    string? Condition,
    bool Negated,
    string? Action,
    string Words,
    int Start,
    int End,
    string? Doubt)
{
    /// <summary>The same with its doubt as one of the kinds.</summary>
    public ProposedFinding WithKinds() => new(
        Kind, Check, Cylinder, Value, Goes, Stops, Condition, Negated, Action, Words, Start, End,
        Doubt is { } text ? [new AsWorded(text)] : []);
}

/// <summary><see cref="CommandHeard"/> when a doubt was a sentence.</summary>
[EntryKind("command-heard")]
internal sealed record WordedCommandHeard(long Recording, SpokenCommand Command, string? Doubt) : EntryBody, IFormerBody
{
    /// <inheritdoc/>
    public EntryBody Today() => new CommandHeard(Recording, Command, Doubt is { } text ? new AsWorded(text) : null);
}
