using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>verify --json</c> writes for an archive.</summary>
/// <param name="Faults">All that is wrong, by file.</param>
/// <param name="WithheldEntries">Sequences of entries without a body.</param>
/// <param name="WithheldFiles">SHA-256 of the recordings and photos it is without.</param>
internal sealed record ArchiveJson(
    string Archive,
    bool Intact,
    IReadOnlyList<BagFault> Faults,
    string? Vehicle,
    string? Profile,
    int? Entries,
    string? LastHash,
    IReadOnlyList<long> WithheldEntries,
    IReadOnlyList<string> WithheldFiles)
{
    public static ArchiveJson From(string path, IReadOnlyList<BagFault> faults, ArchiveFacts? facts) => new(
        path,
        faults.Count == 0 && facts is not null,
        faults,
        facts?.Vehicle.Name,
        facts?.Profile,
        facts?.Entries.Count,
        facts?.Head,
        [.. facts?.WithheldEntries.Select(entry => entry.Sequence) ?? []],
        [.. facts?.Withheld.Select(one => one.File.Sha256) ?? []]);
}
