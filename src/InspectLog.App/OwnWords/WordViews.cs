using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.OwnWords;

/// <summary>The workshop's own words.</summary>
/// <param name="Words">The words, in the order they were added.</param>
/// <param name="Phrase">The phrase of the word being added; empty before it was typed.</param>
/// <param name="Chosen">The check of the word being added; null before it was chosen.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise. Fields: phrase, check, condition.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record WordsView(
    IReadOnlyList<WorkshopWord> Words,
    string Phrase,
    (CheckSheet Sheet, Check Check)? Chosen,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems);
