using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>Looks whether the check sheets a journal pins are there.</summary>
internal static class PinnedSheets
{
    /// <summary>What became of each; null when it cannot be told.</summary>
    /// <param name="entries">The journal.</param>
    /// <param name="folder">The folder of the sheets; null when there is none.</param>
    /// <param name="isBuiltIn">Whether the program itself has the sheet with a hash.</param>
    public static IReadOnlyList<SheetReport>? Check(
        IEnumerable<JournalEntry> entries, string? folder, Func<string, bool> isBuiltIn)
    {
        var pinned = entries.Where(entry => entry.Body is InspectionStarted)
            .Select(entry => (entry.Sequence, Started: (InspectionStarted)entry.Body!))
            .DistinctBy(one => one.Started.SheetSha256)
            .ToList();
        if (folder is null && !pinned.TrueForAll(one => isBuiltIn(one.Started.SheetSha256)))
        {
            return null;
        }

        return [.. pinned.Select(one => new SheetReport(one.Sequence, one.Started, ConditionOf(one.Started.SheetSha256)))];

        MediaCondition ConditionOf(string sha256)
        {
            var found = folder is null ? MediaCondition.Missing : new SheetFiles(folder).Check(sha256);
            return found == MediaCondition.Missing && isBuiltIn(sha256) ? MediaCondition.Whole : found;
        }
    }
}
