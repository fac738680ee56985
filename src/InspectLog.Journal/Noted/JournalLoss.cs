using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Noted;

/// <summary>A journal does not hold what was noted of it in another one.</summary>
/// <param name="VehicleId">The vehicle; null for the workshop's own journal.</param>
/// <param name="Entries">How many entries were noted.</param>
/// <param name="Head">The hash of the last of them.</param>
/// <param name="Found">How many entries it has now; null where the journal is missing or empty.</param>
public sealed record JournalLoss(string? VehicleId, long Entries, string Head, long? Found)
{
    /// <summary>What is missing or other than noted, in a sentence.</summary>
    public string WhatIsWrong => Found switch
    {
        null when VehicleId is null => $"The workshop's journal is missing or empty, and {Noted} noted of it in the journals of vehicles.",
        null => $"The journal of the vehicle \"{VehicleId}\" is missing or empty, and {Noted} noted of it.",
        { } found when found < Entries => $"{Name} was cut short: it holds {EntryCount(found)}, and {Noted} noted of it.",
        _ => $"{Name} is not the one that was noted: its entry {Entries} is another. It was written anew, or another journal stands in its place.",
    };

    /// <summary>What a person can do.</summary>
    public static string WhatToDo => "Put the journal back from a copy and start InspectLog again.";

    /// <summary>The entry by which a person goes on without what was noted.</summary>
    public LossAccepted Accepted() => new(VehicleId, Entries, Head);

    /// <summary>What a journal lacks of what was noted; null where it holds it, or where only damage, which is told of by
    /// itself, keeps that from being seen.</summary>
    /// <param name="vehicleId">The vehicle; null for the workshop.</param>
    /// <param name="noted">How many entries were noted, and the hash of the last.</param>
    /// <param name="count">How many entries it has: the number of its last one.</param>
    /// <param name="hashAt">The hash of an entry; null where it is missing.</param>
    internal static JournalLoss? Of(string? vehicleId, (long Entries, string Head) noted, long count, Func<long, string?> hashAt)
    {
        if (count < noted.Entries)
        {
            return new(vehicleId, noted.Entries, noted.Head, count == 0 ? null : count);
        }

        return hashAt(noted.Entries) is { } hash && hash != noted.Head ? new(vehicleId, noted.Entries, noted.Head, count) : null;
    }

    /// <summary>What a journal lacks of what was noted; null where nothing.</summary>
    internal static JournalLoss? Of(string? vehicleId, (long Entries, string Head) noted, IReadOnlyList<JournalEntry> entries) =>
        Of(vehicleId, noted, entries.LastSequence(), entries.HashOf);

    private string Name => VehicleId is null ? "The workshop's journal" : $"The journal of the vehicle \"{VehicleId}\"";

    private string Noted => EntryCount(Entries) + (Entries == 1 ? " is" : " are");

    private static string EntryCount(long count) => count == 1 ? "1 entry" : FormattableString.Invariant($"{count} entries");
}
