using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>What verifying needs to know of a journal, without its entries.</summary>
/// <param name="Hashes">Hashes of the sound entries, by rising sequence.</param>
/// <param name="Damage">The lines that are not sound.</param>
/// <param name="Withheld">Sequences of the entries whose bodies are withheld, rising.</param>
/// <param name="Unread">How many entries are of a kind or version this program does not know.</param>
/// <param name="Pointing">The entries that name files, sheets or heads of journals, by rising sequence.</param>
internal sealed record JournalFacts(
    EntryHashes Hashes,
    IReadOnlyList<BrokenLine> Damage,
    IReadOnlyList<long> Withheld,
    int Unread,
    IReadOnlyList<JournalEntry> Pointing)
{
    /// <summary>Which entries were erased, and by which tombstones.</summary>
    public IReadOnlyDictionary<long, long> ErasedBy { get; init; } = new Dictionary<long, long>();

    /// <summary>The tombstones of erasures.</summary>
    public IReadOnlyList<JournalEntry> Tombstones { get; init; } = [];

    /// <summary>The facts of a journal that was read whole.</summary>
    public static JournalFacts Of(JournalScan scan) => Of(
        EntryHashes.Of(scan.Entries),
        scan.Damage,
        [.. scan.Entries.Where(entry => entry.IsWithheld).Select(entry => entry.Sequence)],
        scan.Entries.Count(entry => !entry.IsWithheld && !EntryKinds.Knows(entry.Kind, entry.Version)),
        scan.Entries);

    /// <summary>The facts, of all entries that matter for them.</summary>
    public static JournalFacts Of(
        EntryHashes hashes, IReadOnlyList<BrokenLine> damage, IReadOnlyList<long> withheld, int unread, IReadOnlyList<JournalEntry> entries) => new(
        hashes, damage, withheld, unread, [.. entries.Where(entry => entry.Body is { } body && IsPointing(body))])
    {
        Tombstones = [.. entries.Where(entry => entry.Body is PersonErased)],
        ErasedBy = Erased.By(entries, withheld),
    };

    private static bool IsPointing(EntryBody body) => body is RecordingKept or PhotoKept or VehiclePictured
        or InspectionStarted or VehiclesNoted or WorkshopNoted or LossAccepted;
}
