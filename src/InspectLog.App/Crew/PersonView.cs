using InspectLog.App.Forms;
using InspectLog.Journal;

namespace InspectLog.App.Crew;

/// <summary>The page where one says who works in this browser.</summary>
/// <param name="Chosen">The name chosen so far; null where none is.</param>
/// <param name="Known">Names already used in the garage, whoever worked last first.</param>
/// <param name="Back">Address of the page it was opened from.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise. Fields: person, back.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record PersonView(
    string? Chosen, IReadOnlyList<string> Known, string Back, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);
