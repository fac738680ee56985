using InspectLog.Journal;

namespace InspectLog.App.Ui;

/// <summary>A page that says one thing: not found, refused, not saved.</summary>
/// <param name="Title">What happened.</param>
/// <param name="Message">What it means and what to do.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record MessageView(string Title, string Message, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>Whether whoever reads it has to be paired before anything else is shown.</summary>
    public bool LeadsToPairing { get; init; }
}
