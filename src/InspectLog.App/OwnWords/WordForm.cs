using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.OwnWords;

/// <summary>Reads a word of the workshop's own from a form: phrase; and on its own page check, as <see cref="Value"/>
/// writes it, and condition, empty for another name of the check.</summary>
public static class WordForm
{
    /// <summary>The word, or null with the errors noted on the form.</summary>
    public static OwnWordAdded? Read(PostedForm form, WorkshopState workshop)
    {
        var chosen = form.Text("check");
        var found = BuiltInSheets.All.SelectMany(sheet => sheet.Checks.Select(check => (Sheet: sheet, Check: check)))
            .FirstOrDefault(one => Value(one.Sheet, one.Check) == chosen);
        if (found.Check is not { } check)
        {
            form.Refuse("check", "Choose the check it belongs to.");
            return null;
        }

        var condition = form.Text("condition");
        if (condition.Length > 0 && check.Conditions.All(known => known.Id != condition))
        {
            form.Refuse("condition", check.Conditions.Count == 0
                ? $"{check.Title} has no conditions. Choose “{AnotherName}”."
                : $"{check.Title} knows {string.Join(", ", check.Conditions.Select(known => known.Id))}. Choose one of these, or “{AnotherName}”.");
        }

        return Read(form, workshop, found.Sheet, check.Id, condition.Length == 0 ? null : condition);
    }

    /// <summary>The word with a meaning that is known already, or null with the errors noted on the form.</summary>
    public static OwnWordAdded? Read(PostedForm form, WorkshopState workshop, CheckSheet sheet, string check, string? condition)
    {
        var word = new OwnWordAdded(sheet.Id, OwnVocabulary.Tidy(form.Text("phrase")), check, condition);
        var vocabulary = new OwnVocabulary(sheet, WorkshopWords.For(workshop, sheet.Id));
        if (form.IsValid && vocabulary.Problem(WorkshopWords.Of(word)) is { } problem)
        {
            form.Refuse("phrase", problem);
        }

        return form.IsValid ? word : null;
    }

    /// <summary>What the list of conditions says for a word that names the check itself.</summary>
    public const string AnotherName = "Another name of the check";

    /// <summary>A check of a sheet as the form names it.</summary>
    public static string Value(CheckSheet sheet, Check check) => $"{sheet.Id}/{check.Id}";
}
