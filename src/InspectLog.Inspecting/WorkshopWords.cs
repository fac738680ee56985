using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting;

/// <summary>The workshop's own words as the dictation room takes them.</summary>
public static class WorkshopWords
{
    /// <summary>The words for one sheet, and for those it goes on from, in the order they were added.</summary>
    public static IReadOnlyList<OwnWord> For(WorkshopState workshop, CheckSheet sheet) =>
        [.. workshop.Words.Where(word => IsFor(sheet, word.Body)).Select(word => Of(word.Body))];

    private static bool IsFor(CheckSheet sheet, OwnWordAdded word) =>
        sheet.IsOneWith(word.Sheet)
        && sheet.Find(word.Check) is { } check
        && (word.Condition is null || check.Conditions.Any(condition => condition.Id == word.Condition));

    /// <summary>A word as the reader of findings takes it.</summary>
    public static OwnWord Of(OwnWordAdded word) => new(word.Phrase, word.Check, word.Condition);
}
