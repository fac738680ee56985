using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>verify --json</c> writes for an archive.</summary>
/// <param name="Faults">All that is wrong, by file.</param>
/// <param name="WithheldEntries">Sequences of entries without a body.</param>
/// <param name="WithheldFiles">SHA-256 of the recordings and photos it is without.</param>
/// <param name="Head">The head of the record, as reports print it.</param>
/// <param name="Sealed">Whether the archive itself is sealed.</param>
/// <param name="Seals">The seals it brings, the newest last.</param>
/// <param name="SealFaults">All that is wrong with them, in sentences.</param>
internal sealed record ArchiveJson(
    string Archive,
    bool Intact,
    IReadOnlyList<BagFault> Faults,
    string? Vehicle,
    string? Profile,
    int? Entries,
    string? LastHash,
    IReadOnlyList<long> WithheldEntries,
    IReadOnlyList<string> WithheldFiles,
    string? Head,
    bool Sealed,
    IReadOnlyList<SealJson> Seals,
    IReadOnlyList<string> SealFaults)
{
    public static ArchiveJson From(string path, IReadOnlyList<BagFault> faults, ArchiveFacts? facts, string? key) => new(
        path,
        faults.Count == 0 && facts is not null && facts.Seals.Faults(key).Count == 0,
        faults,
        facts?.Vehicle.Name,
        facts?.Profile,
        facts?.Entries.Count,
        facts?.Head,
        [.. facts?.WithheldEntries.Select(entry => entry.Sequence) ?? []],
        [.. facts?.Withheld.Select(one => one.File.Sha256) ?? []],
        facts?.Seals.Chain.Record,
        facts?.Seals.Own is not null,
        [.. facts?.Seals.Report.Seals.Select(SealJson.From) ?? []],
        facts?.Seals.Faults(key) ?? []);
}
