using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal;

/// <summary>What entries say in people's words, for search. The journal knows how entries stand in a file; whoever words
/// them knows the sheets they are about. Pure: the same entry of the same vehicle gives the same words.</summary>
public interface IEntryWording
{
    /// <summary>Names this wording. Lists that were made by another are made again when the garage is opened.</summary>
    string Version { get; }

    /// <summary>What of an entry can be found; null where there is nothing. Private facts are never asked for.</summary>
    /// <param name="vehicle">The vehicle with that entry, and perhaps with later ones: nothing that changes with them may
    /// go into the words.</param>
    /// <param name="entry">The entry; its body was read.</param>
    EntryText? Of(VehicleState vehicle, JournalEntry entry);
}

/// <summary>What of an entry can be found.</summary>
/// <param name="Shown">What is shown of it.</param>
/// <param name="FoundBy">What else finds it: a value as it was typed, a check's full title. Who made the entry finds it in
/// any case.</param>
public sealed record EntryText(string Shown, IReadOnlyList<string> FoundBy);
