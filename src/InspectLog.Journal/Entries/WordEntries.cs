namespace InspectLog.Journal.Entries;

/// <summary>A word of the workshop's own for something on a check sheet. Written to the workshop's journal; its
/// sequence is the word's number.</summary>
/// <param name="Sheet">Check sheet id.</param>
/// <param name="Phrase">What people say.</param>
/// <param name="Check">Id of the check it names, or whose condition it means.</param>
/// <param name="Condition">The condition it means; null where it is another name of the check.</param>
[EntryKind("own-word-added")]
public sealed record OwnWordAdded(string Sheet, string Phrase, string Check, string? Condition) : EntryBody;

/// <summary>A word of the workshop's own no longer counts. Written to the workshop's journal.</summary>
/// <param name="Word">Its number.</param>
[EntryKind("own-word-removed")]
public sealed record OwnWordRemoved(long Word) : EntryBody;
