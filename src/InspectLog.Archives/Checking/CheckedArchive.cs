using System.Collections.Immutable;
using InspectLog.Archives.BagIt;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Checking;

/// <summary>What checking an archive found.</summary>
/// <param name="Faults">All that is wrong with it; none where it is intact.</param>
/// <param name="Facts">What it tells; null where its journal cannot be read to the end.</param>
public sealed record CheckedArchive(IReadOnlyList<BagFault> Faults, ArchiveFacts? Facts)
{
    /// <summary>Whether it is whole and unchanged, and is what its seals stand for, as far as it can tell by itself.</summary>
    public bool IsIntact => Faults.Count == 0 && Facts is not null && Facts.Seals.Faults().Count == 0;
}

/// <summary>What an archive tells, once its journal is sound.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Entries">Its entries.</param>
/// <param name="Journal">The journal's bytes.</param>
/// <param name="Info">What the archive says of itself.</param>
/// <param name="Withheld">Recordings and photos that it names and is without.</param>
public sealed record ArchiveFacts(
    VehicleState Vehicle,
    ImmutableList<JournalEntry> Entries,
    ReadOnlyMemory<byte> Journal,
    BagInfo Info,
    IReadOnlyList<WithheldMedia> Withheld)
{
    /// <summary>The seals it brings.</summary>
    public ArchiveSeals Seals { get; init; } = new(null, [], JournalChain.Of(Entries), "");

    /// <summary>Recordings and photos that it names, each once.</summary>
    public IReadOnlyList<MediaFile> Named { get; } = [.. Entries.SelectMany(NamedMedia.Of).DistinctBy(file => file.Sha256)];

    private readonly Lazy<HashSet<MediaFile>> _named = new(() => [.. Entries.SelectMany(NamedMedia.Of)]);

    private readonly Lazy<HashSet<MediaFile>> _withheld = new(() => [.. Withheld.Select(one => one.File)]);

    /// <summary>Whether the journal names a file.</summary>
    internal bool Names(MediaFile file) => _named.Value.Contains(file);

    /// <summary>Whether a file is listed as withheld.</summary>
    internal bool IsWithheld(MediaFile file) => _withheld.Value.Contains(file);

    /// <summary>Check sheets that it pins, by the first inspection that pins each.</summary>
    public IReadOnlyList<InspectionStarted> Sheets { get; } =
        [.. Entries.Select(entry => entry.Body).OfType<InspectionStarted>().DistinctBy(started => started.SheetSha256)];

    /// <summary>Entries whose bodies are withheld.</summary>
    public IEnumerable<JournalEntry> WithheldEntries => Entries.Where(entry => entry.IsWithheld);

    /// <summary>Hash of the first entry: it tells journals apart for good.</summary>
    public string FirstHash => Entries[0].Hash;

    /// <summary>Hash of the last entry.</summary>
    public string Head => Entries[^1].Hash;

    /// <summary>The id the vehicle has where the archive was made.</summary>
    public string VehicleId => Info[ArchiveFields.Vehicle] ?? "";

    /// <summary>The name of the profile it was made with.</summary>
    public string Profile => Info[ArchiveFields.Profile] ?? "";

    /// <summary>The end of the vehicle number, where that is all that is given of it.</summary>
    public string? VinEnding => Info[ArchiveFields.VinEnding];
}
