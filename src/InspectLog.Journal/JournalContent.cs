using System.Collections.Immutable;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal;

/// <summary>What a journal's file holds, whatever state it is in: one bad file, line or entry costs only itself.</summary>
/// <param name="State">What its sound entries say as a whole.</param>
/// <param name="Entries">Its sound entries, before and after damage.</param>
/// <param name="SoundBytes">Length of the part before the first damage.</param>
/// <param name="Damage">What is wrong with it; null where nothing is.</param>
internal sealed record JournalContent<TState>(
    TState State, ImmutableList<JournalEntry> Entries, int SoundBytes, JournalDamage? Damage);

/// <summary>Reads the files of journals.</summary>
internal static class JournalContent
{
    /// <summary>Reads a journal.</summary>
    /// <param name="log">Where it is kept; may be empty yet.</param>
    /// <param name="before">The state before the first entry.</param>
    /// <param name="apply">The state after one more entry.</param>
    /// <param name="mustHoldEntries">Whether a journal without an entry is damage.</param>
    public static JournalContent<TState> Of<TState>(
        IEntryLog log, TState before, Func<TState, JournalEntry, TState> apply, bool mustHoldEntries)
    {
        try
        {
            var bytes = Whole(log);
            return mustHoldEntries && bytes.Length == 0
                ? Unreadable(log, before, "the file is missing or empty")
                : Of(log.Place, Scan(bytes), before, apply);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return Unreadable(log, before, problem.Message.TrimEnd('.'));
        }
    }

    // It is read with several processors at once, so all of it has to be there.
    private static byte[] Whole(IEntryLog log)
    {
        using var stream = log.OpenAfresh();
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>A sound journal is read the quick way, any other one the way that says what is wrong.</summary>
    private static JournalScan Scan(byte[] bytes) =>
        QuickEntries.Of(bytes) is { } entries ? new(entries, bytes.Length, []) : JournalScan.Of(bytes);

    private static JournalContent<TState> Unreadable<TState>(IEntryLog log, TState before, string why) =>
        new(before, [], 0, new(log.Place, [], why));

    private static JournalContent<TState> Of<TState>(
        string path, JournalScan scan, TState before, Func<TState, JournalEntry, TState> apply)
    {
        var state = before;
        var damage = scan.Damage;
        foreach (var entry in scan.Entries)
        {
            try
            {
                state = apply(state, entry);
            }
            catch (Exception)
            {
                // Its hashes are sound and it says what cannot be, in a way nobody thought of. It is shown and counts for
                // nothing.
                damage = damage.Add(new(entry.Sequence, "what it says cannot be taken", IsUnfinished: false) { HoldsEntry = true });
            }
        }

        return new(state, scan.Entries, scan.SoundBytes, damage.IsEmpty ? null : new(path, damage.Sort(ByLine), Unreadable: null));
    }

    private static int ByLine(BrokenLine one, BrokenLine other) => one.Line.CompareTo(other.Line);
}
