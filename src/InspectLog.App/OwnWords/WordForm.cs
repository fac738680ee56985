using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Inspecting;
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
        if (Find(form.Text("check")) is not var (sheet, check))
        {
            form.Refuse("check", NoCheck);
            return null;
        }

        var condition = form.Text("condition");
        if (condition.Length > 0 && check.Conditions.All(known => known.Id != condition))
        {
            form.Refuse("condition", check.Conditions.Count == 0
                ? $"{check.Title} has no conditions. Choose “{AnotherName}”."
                : $"{check.Title} knows {string.Join(", ", check.Conditions.Select(known => known.Id))}. Choose one of these, or “{AnotherName}”.");
        }

        return Read(form, workshop, sheet, check.Id, condition.Length == 0 ? null : condition);
    }

    /// <summary>The word with a meaning that is known already, or null with the errors noted on the form.</summary>
    public static OwnWordAdded? Read(PostedForm form, WorkshopState workshop, CheckSheet sheet, string check, string? condition)
    {
        var word = new OwnWordAdded(BuiltInSheets.FamilyOf(sheet.Id), OwnVocabulary.Tidy(form.Text("phrase")), check, condition);
        var vocabulary = new OwnVocabulary(sheet, WorkshopWords.For(workshop, sheet));
        if (form.IsValid && vocabulary.Problem(WorkshopWords.Of(word)) is { } problem)
        {
            form.Refuse("phrase", problem);
        }

        return form.IsValid ? word : null;
    }

    /// <summary>The check a form names, as <see cref="Value"/> writes it; null where there is none.</summary>
    public static (CheckSheet Sheet, Check Check)? Find(string value) =>
        value.Split('/') is [var id, var checkId] && BuiltInSheets.Find(id) is { } sheet && sheet.Find(checkId) is { } check
            ? (sheet, check)
            : null;

    /// <summary>What is said of a form that names no check.</summary>
    public const string NoCheck = "Choose the check it belongs to.";

    /// <summary>What the list of conditions says for a word that names the check itself.</summary>
    public const string AnotherName = "Another name of the check";

    /// <summary>A check of a sheet as the form names it.</summary>
    public static string Value(CheckSheet sheet, Check check) => $"{sheet.Id}/{check.Id}";
}
