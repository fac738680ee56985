using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Sealing;

/// <summary>What of a journal seals are held against: the hashes of its sound entries, and which are withheld.</summary>
public sealed class JournalChain
{
    private readonly Func<long, string?> _hashOf;

    private readonly IReadOnlyDictionary<long, long> _erasedBy;

    private JournalChain(
        long count, Func<long, string?> hashOf, IReadOnlyList<long> withheld, IReadOnlyDictionary<long, long> erasedBy, bool isDamaged) =>
        (Count, _hashOf, Withheld, _erasedBy, IsDamaged) = (count, hashOf, withheld, erasedBy, isDamaged);

    /// <summary>How many entries there are: the sequence of the last, 0 where there is none.</summary>
    public long Count { get; }

    /// <summary>Sequences of those whose bodies are withheld, rising.</summary>
    public IReadOnlyList<long> Withheld { get; }

    /// <summary>Sequences of those that a tombstone after an entry says were erased since, rising.</summary>
    /// <param name="sequence">The entry.</param>
    public IReadOnlyList<long> ErasedSince(long sequence) =>
        [.. _erasedBy.Where(one => one.Key <= sequence && one.Value > sequence).Select(one => one.Key).Order()];

    /// <summary>Whether lines of the journal are damaged, so that entries are missing here.</summary>
    public bool IsDamaged { get; }

    /// <summary>The chain of a journal.</summary>
    /// <param name="entries">Its sound entries, by rising sequence.</param>
    /// <param name="isDamaged">Whether there are lines that are not sound.</param>
    public static JournalChain Of(IReadOnlyList<JournalEntry> entries, bool isDamaged = false)
    {
        var withheld = entries.Where(entry => entry.IsWithheld).ToList(); // an erased one is among them
        return new(entries.LastSequence(), entries.HashOf, [.. withheld.Select(entry => entry.Sequence)], Erased.By(withheld), isDamaged);
    }

    /// <summary>The chain of a vehicle's journal, without going through its entries.</summary>
    /// <param name="vehicle">The vehicle after the last of them.</param>
    /// <param name="entries">Its sound entries, by rising sequence.</param>
    /// <param name="isDamaged">Whether there are lines that are not sound.</param>
    public static JournalChain Of(VehicleState vehicle, IReadOnlyList<JournalEntry> entries, bool isDamaged = false) => new(
        entries.LastSequence(), entries.HashOf, [.. vehicle.Withheld.Select(entry => entry.Sequence)],
        vehicle.Withheld.Where(entry => entry.ErasedBy is not null).ToDictionary(entry => entry.Sequence, entry => entry.ErasedBy!.Value), isDamaged);

    /// <summary>The chain of a journal that was looked through.</summary>
    internal static JournalChain Of(JournalFacts facts) => new(facts.Hashes.Last, facts.Hashes.At, facts.Withheld, facts.ErasedBy, facts.Damage.Count > 0);

    /// <summary>The chain of a vehicle's journal, read from its file without a lock and without writing.</summary>
    /// <exception cref="UnknownVehicleException">There is no such vehicle in the data folder.</exception>
    /// <exception cref="IOException">The journal cannot be read.</exception>
    public static JournalChain Read(string dataFolder, string vehicleId)
    {
        var file = VehicleIds.IsId(vehicleId) ? new DataFolder(Path.GetFullPath(dataFolder)).Journal(vehicleId) : null;
        if (file is null || !File.Exists(file))
        {
            throw new UnknownVehicleException(vehicleId);
        }

        return Of(JournalFacts.Of(ReadOnlyScan.Of(file)));
    }

    /// <summary>The head of the record, as reports and seals have it; empty where there is no entry. Of a damaged journal it is
    /// that of the entries that can be read: where the last of them is the last there was, the same as before the damage.
    /// </summary>
    public string Record => Count == 0 ? "" : RecordHead.Of(Count, HashOf(Count)!, Withheld);

    /// <summary>Looks for the entry at which a head was printed; null where none has it, and in a damaged journal.</summary>
    /// <param name="head">The head of a record, 64 lower-case hex digits.</param>
    public HeadComparison? Find(string head) => IsDamaged ? null : HeadComparison.Of(head, Count, _hashOf, Withheld, _erasedBy);

    /// <summary>The hash of the entry of a sequence, lower-case hex; null where there is none.</summary>
    public string? HashOf(long sequence) => _hashOf(sequence);
}
