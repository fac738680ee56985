using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.State;

namespace InspectLog.App.Reports;

/// <summary>Findings that were left unconfirmed at closing and dropped after it: the report said them once, so it says what
/// became of them. Pure.</summary>
public static class ReportDropped
{
    /// <summary>"Dropped on 12 March 2026 by Tess Okafor: cap contacts, tower 3: corroded." A note that is left out of the
    /// report is not quoted.</summary>
    public static IReadOnlyList<string> Later(BenchScene scene, WorkshopState workshop) =>
    [
        .. from note in scene.Inspection.WordedNotes
           from card in ProposalCards.Of(note, scene, workshop)
           where card is { State: ProposalState.Dropped, First.Later: not null }
           select $"Dropped on {Times.Date(card.First.Later!.At)} by {card.First.Later.By}: {Words(note, card)}.",
    ];

    private static string Words(WordedNote note, ProposalCard card) => note.History.IsLeftOutOfReport
        ? "a finding in a note that is left out of this report"
        : $"{Phrases.Lower(card.Title)}: {card.Text}, which was not confirmed before closing";
}
