using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.State;

/// <summary>Where the lists of closed inspections of a vehicle are left: on the disk, as the entries they follow from.</summary>
/// <param name="places">Where the vehicle's entries stand.</param>
/// <param name="cache">The lists that were needed lately.</param>
internal sealed class InspectionShelf(EntryPlaces places, ContentCache cache)
{
    private const int ReadAtOnce = 256;

    private readonly SharedParts _shared = new();

    /// <summary>Leaves the lists of an inspection.</summary>
    public ShelvedInspection Put(long number, InspectionStarted how, EntryRuns entries, CameIn cameIn, InspectionContent content)
    {
        var shelved = new ShelvedInspection(this, number, how, entries, cameIn, InspectionDigest.Of(content, _shared));
        cache.Keep(shelved, content, entries.Count);
        return shelved;
    }

    /// <summary>The lists of an inspection.</summary>
    public InspectionContent Take(ShelvedInspection shelved) => cache.Find(shelved) ?? ReadAgain(shelved);

    /// <summary>The lists of an inspection where they were needed lately; null elsewhere.</summary>
    public InspectionContent? Find(ShelvedInspection shelved) => cache.Find(shelved);

    /// <summary>An entry.</summary>
    public JournalEntry Entry(long sequence) => places.Read((int)sequence - 1);

    private InspectionContent ReadAgain(ShelvedInspection shelved)
    {
        var content = InspectionState.ReadAgain(EntriesOf(shelved.Entries), shelved.How, shelved.CameIn);
        cache.Keep(shelved, content, shelved.Entries.Count);
        return content;
    }

    private IEnumerable<JournalEntry> EntriesOf(EntryRuns entries) =>
        from run in entries.Runs
        from part in Parts((int)run.First - 1, (int)run.Last)
        from entry in places.Read(part.From, part.To)
        select entry;

    private static IEnumerable<(int From, int To)> Parts(int from, int to)
    {
        for (; from < to; from += ReadAtOnce)
        {
            yield return (from, Math.Min(to, from + ReadAtOnce));
        }
    }
}

/// <summary>A closed inspection whose lists are on the shelf.</summary>
/// <param name="Shelf">The shelf.</param>
/// <param name="Number">The inspection.</param>
/// <param name="How">How it was begun.</param>
/// <param name="Entries">The entries the lists follow from.</param>
/// <param name="CameIn">Which of them came in from elsewhere.</param>
/// <param name="Digest">What is asked of many inspections at once.</param>
internal sealed record ShelvedInspection(
    InspectionShelf Shelf, long Number, InspectionStarted How, EntryRuns Entries, CameIn CameIn, InspectionDigest Digest)
{
    /// <summary>The lists.</summary>
    public InspectionContent Content => Shelf.Take(this);

    /// <summary>The last reading that counts of a check at a place; null where it was not read. A plain one is read by itself.
    /// </summary>
    public Recorded<ReadingDecided>? LastReading(string check, int? cylinder)
    {
        foreach (var last in Digest.LastReadings)
        {
            if (last.Check == check && last.Cylinder == cylinder)
            {
                return last.IsPlain && Shelf.Find(this) is null
                    ? InspectionState.PlainReading(Shelf.Entry(last.Sequence))
                    : Content.LastReadings[(check, cylinder)];
            }
        }

        return null;
    }
}
