using InspectLog.Dictation.Understanding;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.OwnWords;

/// <summary>The workshop's own words as the dictation room takes them.</summary>
public static class WorkshopWords
{
    /// <summary>The words for one sheet, in the order they were added.</summary>
    public static IReadOnlyList<OwnWord> For(WorkshopState workshop, string sheetId) =>
        [.. workshop.Words.Where(word => word.Body.Sheet == sheetId).Select(word => Of(word.Body))];

    public static OwnWord Of(OwnWordAdded word) => new(word.Phrase, word.Check, word.Condition);
}
