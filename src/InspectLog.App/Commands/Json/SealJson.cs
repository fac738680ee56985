using System.Globalization;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands.Json;

/// <summary>A seal in what <c>verify --json</c> writes.</summary>
/// <param name="File">The name of its file.</param>
/// <param name="Problem">Why it is none; null where it is one.</param>
/// <param name="Standing">What the journal is to it; null where it is none.</param>
/// <param name="Entries">How many entries it is of; null where it is none.</param>
/// <param name="Record">The head of the record; null where it is none.</param>
/// <param name="Key">Fingerprint of its key; null where it is none.</param>
/// <param name="Time">When, by its own account; null where it is none.</param>
/// <param name="WithheldSince">Entries that are withheld since.</param>
/// <param name="Stamped">When, by its time stamp; null where it has none that holds.</param>
/// <param name="StampedBy">Who made that; null where it has none that holds.</param>
internal sealed record SealJson(
    string File,
    string? Problem,
    SealStanding? Standing,
    long? Entries,
    string? Record,
    string? Key,
    string? Time,
    IReadOnlyList<long> WithheldSince,
    string? Stamped,
    string? StampedBy)
{
    public static SealJson From(CheckedSeal one) => new(
        one.Kept.Name,
        one.Kept.Problem ?? one.Kept.StampProblem,
        one.Comparison?.Standing,
        one.Kept.Sound?.Seal.Count,
        one.Kept.Sound?.Seal.Record,
        one.Kept.Sound?.Key.Fingerprint,
        Written(one.Kept.Sound?.Seal.Time),
        one.Comparison?.WithheldSince ?? [],
        Written(one.Kept.Stamp?.Time),
        one.Kept.Stamp?.Signer);

    private static string? Written(DateTimeOffset? time) =>
        time?.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
