using InspectLog.App.Forms;
using InspectLog.App.Instruments;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Reads a proposal as a person changed it. The record keeps the reference to what was heard.</summary>
public static class ChangedFinding
{
    /// <summary>The changed record, or null with the errors noted on the form.</summary>
    public static EntryBody? Read(PostedForm form, BenchScene scene, WorkshopState workshop, ProposalCard card)
    {
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place is null || !form.IsValid)
        {
            return null;
        }

        return card.First.Finding.Kind switch
        {
            "reading" => Reading(form, scene, workshop, card, place),
            "observation" => Observation(form, scene, card, place),
            _ => Action(form, scene, card, place),
        };
    }

    private static ReadingDecided? Reading(
        PostedForm form, BenchScene scene, WorkshopState workshop, ProposalCard card, CheckPlace place)
    {
        if (place.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return null;
        }

        var from = card.Proposals.Select(proposal => proposal.Reference).ToList();
        if (card.First.Finding.Goes is not null)
        {
            return ReadingFields.Bracket(form, measurand) is { } bracket
                ? Decided([], bracket, null)
                : null;
        }

        var values = ReadingFields.Values(form, measurand, out var ambiguity);
        if (ambiguity is not null)
        {
            form.Refuse("value", $"{ambiguity.Question} Write it so that it can mean one thing only.");
        }

        var lastUsed = Confirming.LastUsed(scene.Inspection, place.Check);
        return form.IsValid ? Decided(values, null, InstrumentChoice.For(measurand, workshop, lastUsed)[0]) : null;

        ReadingDecided Decided(
            IReadOnlyList<double> numbers, Measuring.Bracket? bracket, Measuring.Instrument? instrument) =>
            ReadingRecords.Decide(
                scene.Inspection.Number,
                scene.Sheet.Rule,
                new GivenReading(
                    place.Check, place.Cylinder, numbers, bracket, card.First.Finding.Words, instrument, from));
    }

    private static ObservationMade? Observation(PostedForm form, BenchScene scene, ProposalCard card, CheckPlace place)
    {
        var condition = form.Text("condition");
        if (place.Check.Conditions.All(known => known.Id != condition))
        {
            form.Refuse("condition", "Choose what you saw from the list.");
            return null;
        }

        return new(
            scene.Inspection.Number, place.Check.Id, place.Cylinder, condition, form.Ticked("absent"), card.First.Reference);
    }

    private static ActionDone? Action(PostedForm form, BenchScene scene, ProposalCard card, CheckPlace place)
    {
        var action = form.Text("action");
        if (!place.Check.Actions.Contains(action))
        {
            form.Refuse("action", "Choose what was done from the list.");
            return null;
        }

        return new(scene.Inspection.Number, place.Check.Id, place.Cylinder, action, card.First.Reference);
    }
}
