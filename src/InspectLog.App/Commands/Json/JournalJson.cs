using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>verify --json</c> writes for each journal.</summary>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
/// <param name="FilesChecked">How many recordings and photos were looked at; null when their folder is not there.</param>
/// <param name="BadFiles">Those of them that are missing or damaged.</param>
internal sealed record JournalJson(
    string Journal,
    bool Intact,
    int Entries,
    int Withheld,
    int Unread,
    string LastHash,
    BrokenLine? Broken,
    int? FilesChecked,
    IReadOnlyList<BadFileJson> BadFiles)
{
    public static JournalJson From(JournalReport report) => new(
        report.File,
        report.IsIntact,
        report.Entries,
        report.Withheld,
        report.Unread,
        report.LastHash,
        report.Broken,
        report.Media?.Count,
        [.. report.BadFiles().Select(file => new BadFileJson(file.Sequence, file.File.Sha256, file.Condition))]);
}

/// <summary>A recording or photo that is not what the journal names.</summary>
/// <param name="Sequence">The first entry that names it.</param>
internal sealed record BadFileJson(long Sequence, string Sha256, MediaCondition Condition);
