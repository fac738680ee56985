using System.Globalization;
using InspectLog.Journal;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>A stretch of a journal, entry by entry: the whole of a long one would be too much for one page.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Entries">The entries of the stretch, newest first.</param>
/// <param name="Count">How many entries there are in all.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record JournalView(
    VehicleState Vehicle, IReadOnlyList<JournalEntry> Entries, long Count, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Entries on a page.</summary>
    public const int Length = 250;

    /// <summary>The stretch that ends with an entry.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="all">All its entries, oldest first.</param>
    /// <param name="upTo">Sequence of the newest entry to show, as an address has it; anything that is none stands for
    /// the newest of all.</param>
    /// <param name="problems">Trouble with the garage.</param>
    public static JournalView Of(
        VehicleState vehicle, IReadOnlyList<JournalEntry> all, string? upTo, IReadOnlyList<GarageProblem> problems)
    {
        var last = int.TryParse(upTo, NumberStyles.None, CultureInfo.InvariantCulture, out var given) && given > 0
            ? Math.Min(given, all.Count)
            : all.Count;
        return new(vehicle, [.. all.Take(last).TakeLast(Length).Reverse()], all.Count, problems);
    }

    /// <summary>Sequence of the newest shown.</summary>
    public long Newest => Entries[0].Sequence;

    /// <summary>Sequence of the oldest shown.</summary>
    public long Oldest => Entries[^1].Sequence;
}
