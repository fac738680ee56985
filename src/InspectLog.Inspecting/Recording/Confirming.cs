using InspectLog.Checks;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Turns proposals into records once a person has confirmed them. Pure.</summary>
public static class Confirming
{
    /// <summary>The entries that confirm a card: its records and what follows from them. None when the card is settled
    /// already, its check is not on the sheet, or it needs a place and none is given.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="workshop">The workshop, for its instruments.</param>
    /// <param name="card">The card.</param>
    /// <param name="places">The places it is about, where the finding itself does not say; null otherwise.</param>
    /// <param name="meant">What a person answered where the values are asked about; empty for nothing.</param>
    public static IReadOnlyList<EntryBody> Bodies(
        BenchScene scene, WorkshopState workshop, ProposalCard card, IReadOnlyList<int?>? places = null, string meant = "") =>
        LooseEndRules.WithWhatFollows(scene, [.. Records(scene, workshop, card, places, meant)]);

    /// <summary>The entries that confirm several cards of a note together: the records, and what follows from them
    /// once.</summary>
    public static IReadOnlyList<EntryBody> Bodies(BenchScene scene, WorkshopState workshop, IEnumerable<ProposalCard> cards) =>
        LooseEndRules.WithWhatFollows(scene, [.. cards.SelectMany(card => Records(scene, workshop, card, null, ""))]);

    /// <summary>Whether a card may be confirmed without being looked at by itself: it is open, it says its place, and
    /// nothing about it is doubtful, unlikely, or more than any instrument at hand shows.</summary>
    public static bool IsSure(ProposalCard card) =>
        card is { State: ProposalState.Open, IsDoubtful: false, IsUnlikely: false, NeedsPlace: false, Check: not null, ReadOff: null or ReadOff.Taken };

    /// <summary>What the values of a card were read off; null where it has none.</summary>
    /// <param name="proposals">The proposals of the card.</param>
    /// <param name="check">Its check.</param>
    /// <param name="workshop">The workshop, for its instruments.</param>
    /// <param name="lastUsed">Id of the instrument last used for the check; null when none was.</param>
    public static ReadOff? ReadOffOf(IReadOnlyList<Proposal> proposals, Check check, WorkshopState workshop, string? lastUsed) =>
        check.Measurand is { } measurand && proposals[0].Finding is { Kind: "reading", Value: not null }
            ? ReadOff.Heard(
                [.. proposals.Select(one => new TypedNumber.Certain(one.Finding.Value!.Value, measurand.DisplayUnit))],
                InstrumentChoice.For(measurand, workshop, lastUsed))
            : null;

    /// <summary>The reading that a card of values or a bracket gives; null while a person has to say first what it was read
    /// off.</summary>
    /// <param name="proposals">The proposals of the card.</param>
    /// <param name="check">Its check.</param>
    /// <param name="readOff">What its values were read off.</param>
    public static GivenReading? Given(IReadOnlyList<Proposal> proposals, Check check, ReadOff? readOff)
    {
        var first = proposals[0].Finding;
        var words = string.Join(" … ", proposals.Select(proposal => proposal.Finding.Words).Distinct());
        var from = proposals.Select(proposal => proposal.Reference).ToList();
        return (first, readOff) switch
        {
            ({ Goes: { } goes, Stops: { } stops }, _) => new(check, first.Cylinder, [], new Bracket(goes, stops), words, null, from),
            (_, ReadOff.Taken taken) => new(check, first.Cylinder, taken.Values, null, words, taken.Instrument, from),
            _ => null,
        };
    }

    private static IEnumerable<EntryBody> Records(
        BenchScene scene, WorkshopState workshop, ProposalCard card, IReadOnlyList<int?>? places, string meant)
    {
        if (card.State != ProposalState.Open || card.Check is not { } check || (card.NeedsPlace && places is not { Count: > 0 }))
        {
            return [];
        }

        return (card.NeedsPlace ? places! : [card.First.Finding.Cylinder])
            .Select(place => Record(scene, workshop, card, check, place, meant))
            .OfType<EntryBody>();
    }

    private static EntryBody? Record(
        BenchScene scene, WorkshopState workshop, ProposalCard card, Check check, int? place, string meant)
    {
        var (finding, number) = (card.First.Finding, scene.Inspection.Number);
        return finding.Kind switch
        {
            "reading" => Given(card.Proposals, check, ReadOffOf(card.Proposals, check, workshop, LastUsed(scene.Inspection, check))?.Answered(meant)) is { } given
                ? ReadingRecords.Decide(scene, WithGauges(scene, workshop, given) with { Cylinder = place })
                : null,
            "observation" => new ObservationMade(number, check.Id, place, finding.Condition!, finding.Negated, card.First.Reference),
            _ => new ActionDone(number, check.Id, place, finding.Action!, card.First.Reference),
        };
    }

    /// <summary>The reading with the gauges last named on the vehicle, where it is a bracket: nobody says them with each.
    /// </summary>
    public static GivenReading WithGauges(BenchScene scene, WorkshopState workshop, GivenReading given) => given.Bracket is null
        ? given
        : given with { Instrument = InstrumentChoice.LastGauges(scene.Vehicle, given.Check.Measurand!.Kind, workshop) };

    /// <summary>Id of the instrument last used for a check in the inspection; null when none was. Gauges propose no meter.
    /// </summary>
    public static string? LastUsed(InspectionState inspection, Check check) => inspection.Readings
        .FindLast(reading => reading.Body.Check == check.Id && reading.Body.Reading is not Bracket)?.Body.Instrument?.Id;
}
