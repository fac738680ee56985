using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Reads a proposal as a person changed it. The record keeps the reference to what was heard.</summary>
public static class ChangedFinding
{
    /// <summary>The changed record, or null with the errors noted on the form, or with what is asked first.</summary>
    public static EntryBody? Read(
        PostedForm form, BenchScene scene, WorkshopState workshop, ProposalCard card, out AskedNumber? asked)
    {
        asked = null;
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place is null || !form.IsValid)
        {
            return null;
        }

        return card.First.Finding.Kind switch
        {
            "reading" => Reading(form, scene, workshop, card, place, out asked),
            "observation" => Observation(form, scene, card, place),
            _ => Action(form, scene, card, place),
        };
    }

    private static ReadingDecided? Reading(
        PostedForm form,
        BenchScene scene,
        WorkshopState workshop,
        ProposalCard card,
        CheckPlace place,
        out AskedNumber? asked)
    {
        asked = null;
        if (place.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return null;
        }

        var from = card.Proposals.Select(proposal => proposal.Reference).ToList();
        if (card.First.Finding.Goes is not null)
        {
            return GaugeFields.Read(form, place.Check, out asked) is { } bracket
                ? Decided([], bracket, null)
                : null;
        }

        var proposed = InstrumentChoice.For(measurand, workshop, Confirming.LastUsed(scene.Inspection, place.Check));
        return ReadingFields.Values(form, place.Check, values => ReadOff.Heard(values, proposed), out asked) is { } taken && form.IsValid
            ? Decided(taken.Values, null, taken.Instrument)
            : null;

        ReadingDecided Decided(
            IReadOnlyList<double> numbers, Measuring.Bracket? bracket, Measuring.Instrument? instrument) =>
            ReadingRecords.Decide(
                scene,
                Confirming.WithGauges(scene, workshop, new GivenReading(
                    place.Check, place.Cylinder, numbers, bracket, card.First.Finding.Words, instrument, from)));
    }

    private static ObservationMade? Observation(PostedForm form, BenchScene scene, ProposalCard card, CheckPlace place) =>
        RecordFields.Condition(form, place.Check) is { } condition
            ? new(scene.Inspection.Number, place.Check.Id, place.Cylinder, condition, form.Ticked("absent"), card.First.Reference)
            : null;

    private static ActionDone? Action(PostedForm form, BenchScene scene, ProposalCard card, CheckPlace place) =>
        RecordFields.Action(form, place.Check) is { } action
            ? new(scene.Inspection.Number, place.Check.Id, place.Cylinder, action, card.First.Reference)
            : null;
}
