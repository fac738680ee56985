using InspectLog.Archives.Checking;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>A journal that was looked through, to be held against what was kept elsewhere.</summary>
/// <param name="Name">Where it is, for people.</param>
/// <param name="Chain">Its entries.</param>
/// <param name="VehicleId">The vehicle as it is called there; null where that is not known.</param>
/// <param name="SealFaults">What is wrong with the seals beside it when only those of a key count.</param>
internal sealed record HeldJournal(string Name, JournalChain Chain, string? VehicleId, Func<string, IEnumerable<string>> SealFaults)
{
    /// <summary>Whether it is the workshop's own, which has no seals.</summary>
    public bool IsWorkshops => Path.GetFileName(Name) == "workshop.jsonl";

    public static IReadOnlyList<HeldJournal> Of(VerificationReport report) =>
        [.. report.Journals.Select(one => new HeldJournal(one.File, one.Chain, one.Seals.VehicleId, key => SealWords.Faults(one.Seals, key)))];

    public static IReadOnlyList<HeldJournal> Of(string archive, ArchiveFacts? facts) =>
        facts is null ? [] : [new(archive, facts.Seals.Chain, facts.VehicleId, key => facts.Seals.Faults(key))];
}
