using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>That what was known of a person was erased.</summary>
/// <param name="Entry">Sequence of the entry that says so.</param>
/// <param name="Time">When, in the workshop's time.</param>
/// <param name="By">Who did it.</param>
/// <param name="Says">Who asked, why, and how much it was.</param>
public sealed record Tombstone(long Entry, DateTimeOffset Time, string By, PersonErased Says)
{
    internal static Tombstone Of(JournalEntry entry) => new(entry.Sequence, entry.LocalTime, entry.Actor, (PersonErased)entry.Body!);
}
