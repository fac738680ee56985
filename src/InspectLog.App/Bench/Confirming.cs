using InspectLog.App.Instruments;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Turns proposals into records once a person has confirmed them. Pure.</summary>
public static class Confirming
{
    /// <summary>The entries that confirm a card: its record and what follows from it. None when the card is settled
    /// already or its check is not on the sheet.</summary>
    public static IReadOnlyList<EntryBody> Bodies(
        InspectionState inspection, CheckSheet sheet, WorkshopState workshop, ProposalCard card)
    {
        if (card.State != ProposalState.Open || card.Check is not { } check)
        {
            return [];
        }

        var record = Record(inspection, sheet.Rule, workshop, card, check);
        return [record, .. LooseEndRules.Following(inspection, sheet, record)];
    }

    /// <summary>The entries that confirm several cards of a note together: the records, and what follows from them
    /// once.</summary>
    public static IReadOnlyList<EntryBody> Bodies(
        InspectionState inspection, CheckSheet sheet, WorkshopState workshop, IEnumerable<ProposalCard> cards) =>
        [.. cards.SelectMany(card => Bodies(inspection, sheet, workshop, card)).Distinct()];

    /// <summary>Whether a card may be confirmed without being looked at by itself: it is open and nothing about it is
    /// doubtful.</summary>
    public static bool IsSure(ProposalCard card) =>
        card is { State: ProposalState.Open, Doubt: null, Check: not null };

    /// <summary>The reading that a card of values or a bracket gives.</summary>
    /// <param name="proposals">The proposals of the card.</param>
    /// <param name="check">Its check.</param>
    /// <param name="workshop">The workshop, for its instruments.</param>
    /// <param name="lastUsed">Id of the instrument last used for the check; null when none was.</param>
    public static GivenReading Given(
        IReadOnlyList<Proposal> proposals, Check check, WorkshopState workshop, string? lastUsed)
    {
        var first = proposals[0].Finding;
        var words = string.Join(" … ", proposals.Select(proposal => proposal.Finding.Words).Distinct());
        var from = proposals.Select(proposal => proposal.Reference).ToList();
        if (first is { Goes: { } goes, Stops: { } stops })
        {
            return new(check, first.Cylinder, [], new Bracket(goes, stops), words, null, from);
        }

        var instrument = InstrumentChoice.For(check.Measurand!, workshop, lastUsed)[0];
        var values = proposals.Select(proposal => proposal.Finding.Value!.Value).ToList();
        return new(check, first.Cylinder, values, null, words, instrument, from);
    }

    private static EntryBody Record(
        InspectionState inspection, DecisionRule rule, WorkshopState workshop, ProposalCard card, Check check)
    {
        var finding = card.First.Finding;
        return finding.Kind switch
        {
            "reading" => ReadingRecords.Decide(
                inspection.Number, rule, Given(card.Proposals, check, workshop, LastUsed(inspection, check))),
            "observation" => new ObservationMade(
                inspection.Number, check.Id, finding.Cylinder, finding.Condition!, finding.Negated, card.First.Reference),
            _ => new ActionDone(inspection.Number, check.Id, finding.Cylinder, finding.Action!, card.First.Reference),
        };
    }

    /// <summary>Id of the instrument last used for a check in the inspection; null when none was.</summary>
    public static string? LastUsed(InspectionState inspection, Check check) =>
        inspection.Readings.FindLast(reading => reading.Body.Check == check.Id)?.Body.Instrument?.Id;
}
