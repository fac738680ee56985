using System.Collections.Immutable;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal;

/// <summary>What a journal's file holds, whatever state it is in: one bad file, line or entry costs only itself.</summary>
/// <param name="State">What its sound entries say as a whole.</param>
/// <param name="Entries">Its sound entries, before and after damage. Those of a journal whose every line is sound, and of which
/// nobody was erased, stay on the disk (<see cref="StoredEntries"/>).</param>
/// <param name="SoundBytes">Length of the part before the first damage.</param>
/// <param name="Damage">What is wrong with it; null where nothing is.</param>
internal sealed record JournalContent<TState>(
    TState State, IReadOnlyList<JournalEntry> Entries, long SoundBytes, JournalDamage? Damage);

/// <summary>Reads the files of journals.</summary>
internal static class JournalContent
{
    /// <summary>Reads a journal.</summary>
    /// <param name="log">Where it is kept; may be empty yet.</param>
    /// <param name="before">The state before the first entry.</param>
    /// <param name="apply">The state after one more entry.</param>
    /// <param name="mustHoldEntries">Whether a journal without an entry is damage.</param>
    /// <param name="cache">Entries that were read lately; null for a cache of its own.</param>
    /// <param name="reading">Gives the state before the first entry a way to read entries again; null where it needs none.</param>
    public static JournalContent<TState> Of<TState>(
        IEntryLog log,
        TState before,
        Func<TState, JournalEntry, TState> apply,
        bool mustHoldEntries,
        EntryCache? cache = null,
        Func<TState, EntryPlaces, TState>? reading = null)
    {
        try
        {
            return Quick(log, before, apply, mustHoldEntries, cache ?? new(), reading)
                ?? Of(log.Place, Scan(Whole(log)), before, apply);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return Unreadable(log, before, problem.Message.TrimEnd('.'));
        }
    }

    /// <summary>Reads a sound journal part by part, on all processors: while one part is taken, the next is read. Null where it
    /// is not sound for sure, and where entries say how others before them are to be read: those have to be known first.</summary>
    private static JournalContent<TState>? Quick<TState>(
        IEntryLog log,
        TState before,
        Func<TState, JournalEntry, TState> apply,
        bool mustHoldEntries,
        EntryCache cache,
        Func<TState, EntryPlaces, TState>? reading)
    {
        using var file = log.OpenAfresh();
        if (mustHoldEntries && file.Length == 0)
        {
            return Unreadable(log, before, "the file is missing or empty");
        }

        var (lines, names) = (WholeLines.Of(file), new EntryNames());
        var places = new EntryPlaces(log, cache, names);
        var taken = new TakenEntries<TState>(reading is null ? before : reading(before, places), apply);
        var (count, bytes) = (0, 0L);
        for (var part = lines.Next(); part is not null;)
        {
            if (QuickEntries.Of(part.Value, places.EndAfter(count), names) is not { } read || read.Entries.Any(Erased.IsSaidBy))
            {
                return null;
            }

            places.Add(count, read.Ends, read.Hashes.Span);
            (count, bytes) = (count + read.Entries.Count, bytes + part.Value.Length);
            var next = Task.Run(lines.Next);
            taken.Take(read.Entries);
            part = next.GetAwaiter().GetResult();
        }

        return new(taken.State, new StoredEntries(places, count), bytes, taken.Damage.IsEmpty ? null : new(log.Place, taken.Damage, Unreadable: null));
    }

    private static JournalScan Scan(byte[] bytes) =>
        QuickEntries.Of(bytes) is { } entries ? new(entries, bytes.Length, []) : JournalScan.Of(bytes);

    // Whoever says what is wrong with it goes forth and back in it.
    private static byte[] Whole(IEntryLog log)
    {
        using var stream = log.OpenAfresh();
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static JournalContent<TState> Unreadable<TState>(IEntryLog log, TState before, string why) =>
        new(before, [], 0, new(log.Place, [], why));

    private static JournalContent<TState> Of<TState>(
        string path, JournalScan scan, TState before, Func<TState, JournalEntry, TState> apply)
    {
        var taken = new TakenEntries<TState>(before, apply);
        taken.Take(scan.Entries);
        var damage = scan.Damage.AddRange(taken.Damage);
        return new(taken.State, scan.Entries, scan.SoundBytes, damage.IsEmpty ? null : new(path, damage.Sort(ByLine), Unreadable: null));
    }

    private static int ByLine(BrokenLine one, BrokenLine other) => one.Line.CompareTo(other.Line);

    /// <summary>What entries say as a whole, taken one after the other.</summary>
    private sealed class TakenEntries<TState>(TState before, Func<TState, JournalEntry, TState> apply)
    {
        public TState State { get; private set; } = before;

        public ImmutableList<BrokenLine> Damage { get; private set; } = [];

        public void Take(IEnumerable<JournalEntry> entries)
        {
            foreach (var entry in entries)
            {
                try
                {
                    State = apply(State, entry);
                }
                catch (Exception)
                {
                    // Its hashes are sound and it says what cannot be, in a way nobody thought of. It is shown and counts for
                    // nothing.
                    Damage = Damage.Add(new(entry.Sequence, "what it says cannot be taken", IsUnfinished: false) { HoldsEntry = true });
                }
            }
        }
    }
}
