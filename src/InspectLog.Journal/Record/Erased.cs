using System.Collections.Immutable;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>What the tombstones of a journal say of its other entries. Pure.</summary>
public static class Erased
{
    /// <summary>Stands where a person's name was.</summary>
    public const string Name = "(name erased)";

    /// <summary>Whether an entry says how others are to be read.</summary>
    internal static bool IsSaidBy(JournalEntry entry) => entry.Body is PersonErased or EntryRestated;

    /// <summary>The entries as they are to be read: those that were erased say by which tombstone, and those that were said again
    /// without the person say that.</summary>
    /// <param name="entries">The entries as the lines have them, by rising sequence.</param>
    internal static ImmutableList<JournalEntry> In(ImmutableList<JournalEntry> entries)
    {
        var tombstones = entries.FindAll(entry => entry.Body is PersonErased);
        if (tombstones.IsEmpty)
        {
            return entries;
        }

        var changed = entries.ToBuilder();
        var withheld = entries.FindAll(entry => entry.IsWithheld);
        foreach (var tombstone in tombstones)
        {
            var says = (PersonErased)tombstone.Body!;
            foreach (var gone in withheld.Where(entry => entry.Sequence < tombstone.Sequence && says.Took(entry.Sequence)))
            {
                Change(changed, gone.Sequence, entry => entry with { ErasedBy = entry.ErasedBy ?? tombstone.Sequence });
            }
        }

        foreach (var restated in entries.Select(entry => entry.Body).OfType<EntryRestated>())
        {
            Change(changed, restated.Entry, entry => Restated(entry, restated));
        }

        return changed.ToImmutable();
    }

    /// <summary>Which entries were erased, and by which tombstones.</summary>
    internal static IReadOnlyDictionary<long, long> By(IEnumerable<JournalEntry> entries) =>
        entries.Where(entry => entry.ErasedBy is not null).ToDictionary(entry => entry.Sequence, entry => entry.ErasedBy!.Value);

    /// <summary>The same, of tombstones among entries and of what is withheld.</summary>
    internal static IReadOnlyDictionary<long, long> By(IEnumerable<JournalEntry> entries, IReadOnlyList<long> withheld)
    {
        var by = new Dictionary<long, long>();
        foreach (var tombstone in entries.Where(entry => entry.Body is PersonErased))
        {
            foreach (var sequence in withheld.Where(one => one < tombstone.Sequence && ((PersonErased)tombstone.Body!).Took(one)))
            {
                by.TryAdd(sequence, tombstone.Sequence);
            }
        }

        return by;
    }

    /// <summary>Lines that do not say who made them, and for which no tombstone stands, are not sound: anything could have been
    /// changed in them.</summary>
    internal static List<ScannedLine> Vouched(List<ScannedLine> lines)
    {
        if (!lines.Exists(line => line.Entry?.Rest is not null))
        {
            return lines;
        }

        var vouched = lines.Select(line => line.Entry?.Body).OfType<PersonErased>()
            .SelectMany(tombstone => tombstone.Nameless ?? []).ToHashSet();
        return lines.ConvertAll(line => line.Entry is { Rest: { } rest } entry && !vouched.Contains(new(entry.Sequence, rest))
            ? line with { Entry = null, Problem = "who made it was taken out, and no entry says so, or what is left of it was changed" }
            : line);
    }

    private static JournalEntry Restated(JournalEntry entry, EntryRestated restated)
    {
        var body = BodyJson.Read(entry.Kind, entry.Version, restated.Says);
        return entry with { Body = body, UnreadBody = body is null ? restated.Says.GetRawText() : null, IsRestated = true };
    }

    /// <summary>Changes an entry that is there and whose body is gone; a tombstone that says so of another says it in vain.
    /// </summary>
    private static void Change(ImmutableList<JournalEntry>.Builder entries, long sequence, Func<JournalEntry, JournalEntry> change)
    {
        var place = entries.CountUpTo(sequence) - 1;
        if (place >= 0 && entries[place] is { IsWithheld: true } entry && entry.Sequence == sequence)
        {
            entries[place] = change(entry);
        }
    }
}
