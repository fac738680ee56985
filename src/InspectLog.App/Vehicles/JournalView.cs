using InspectLog.App.Bench;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>A stretch of a journal, entry by entry: the whole of a long one would be too much for one page.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Entries">The entries of the stretch, newest first.</param>
/// <param name="Sheets">The sheets its entries are read with.</param>
/// <param name="Count">Number of the newest entry of all; 0 where there is none.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record JournalView(
    VehicleState Vehicle, IReadOnlyList<JournalEntry> Entries, EntrySheets Sheets, long Count, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The part of the page that somebody searched for; null where nobody did.</summary>
    public string? Found { get; init; }

    /// <summary>Which entries no longer count as they stand.</summary>
    public EntryMarks Marks { get; } = EntryMarks.Of(Vehicle);

    /// <summary>What was withdrawn and counts again, by the first entry of what it is about.</summary>
    public ILookup<long, Restoration> Restored { get; } = Entries
        .Select(entry => Vehicle.InspectionWith(entry.Sequence)?.Find(entry.Sequence))
        .OfType<IKept>()
        .SelectMany(kept => kept.History.Restored.Select(undone => (kept.Sequence, Undone: undone)))
        .ToLookup(one => one.Sequence, one => one.Undone);

    /// <summary>Entries on a page.</summary>
    public const int Length = 250;

    /// <summary>The stretch that ends with an entry.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets its inspections were started with.</param>
    /// <param name="all">All its sound entries, by rising sequence.</param>
    /// <param name="upTo">Sequence of the newest entry to show, as an address has it; anything that is none stands for
    /// the newest of all.</param>
    /// <param name="problems">Trouble with the garage.</param>
    public static JournalView Of(
        VehicleState vehicle, SheetLibrary sheets, IReadOnlyList<JournalEntry> all, string? upTo, IReadOnlyList<GarageProblem> problems)
    {
        var last = int.TryParse(upTo, NumberStyles.None, CultureInfo.InvariantCulture, out var given) && given > 0
            ? Math.Min(all.Count, Math.Max(1, all.CountUpTo(given)))
            : all.Count;
        var first = Math.Max(0, last - Length);
        List<JournalEntry> shown = [.. Enumerable.Range(first, last - first).Reverse().Select(at => all[at])];
        return new(vehicle, shown, new(vehicle, sheets), all.Count == 0 ? 0 : all[^1].Sequence, problems)
        {
            Remarks = shown.Select((entry, at) => (entry.Sequence, Remarks: EntryRemarks.Of(entry, last - at < 2 ? null : all[last - at - 2])))
                .Where(one => one.Remarks.Count > 0)
                .ToDictionary(one => one.Sequence, one => one.Remarks),
            IsOldest = first == 0,
            Mends = shown.Select(entry => (entry.Sequence, Link: MendLink.Of(vehicle, sheets, entry)))
                .Where(one => one.Link is not null)
                .ToDictionary(one => one.Sequence, one => one.Link!),
        };
    }

    /// <summary>Where what entries say can be mended, by their sequence.</summary>
    public required IReadOnlyDictionary<long, MendLink> Mends { get; init; }

    /// <summary>What to heed about entries, by their sequence: breaks of the chain, and clocks that do not agree.</summary>
    public required IReadOnlyDictionary<long, IReadOnlyList<string>> Remarks { get; init; }

    /// <summary>The lines of the file that are damaged.</summary>
    public IReadOnlyList<BrokenLine> Damage { get; init; } = [];

    /// <summary>Whether nothing older is left to show.</summary>
    public required bool IsOldest { get; init; }

    /// <summary>Sequence of the newest shown; 0 where none is.</summary>
    public long Newest => Entries.Count == 0 ? 0 : Entries[0].Sequence;

    /// <summary>Sequence of the oldest shown; 0 where none is.</summary>
    public long Oldest => Entries.Count == 0 ? 0 : Entries[^1].Sequence;
}
