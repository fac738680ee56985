using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Reads what an entry is to say from now on. What it confirms stays what it was.</summary>
public static class AmendedEntry
{
    /// <summary>Whether an entry is put right by the form that is read here.</summary>
    public static bool IsReadFromForms(IKept kept) => kept is VoiceNote { CanBeCorrected: true } || kept.Says is ReadingDecided or ObservationMade or ActionDone or NoteWritten;

    /// <summary>What it is to say, or null with the errors noted on the form, or with what is asked first.</summary>
    public static EntryBody? Read(
        PostedForm form, BenchScene scene, WorkshopState workshop, IKept kept, out AskedNumber? asked)
    {
        asked = null;
        return kept.Says switch
        {
            ReadingDecided reading => AmendedReading.Read(form, scene, workshop, kept.Sequence, reading, out asked),
            ObservationMade seen => Observation(form, scene, seen),
            ActionDone done => Action(form, scene, done),
            NoteWritten note => Note(form, scene, note),
            RecordingKept => Words(form, kept.Sequence),
            _ => null,
        };
    }

    /// <summary>The entries that put it right. A note is read anew for findings, unless nothing can be confirmed any more.
    /// </summary>
    public static IReadOnlyList<EntryBody> Bodies(
        BenchScene scene, WorkshopState workshop, long entry, EntryBody says)
    {
        if (says is not AmendableBody amended)
        {
            return TypedNotes.Entries(scene, workshop, (WordsCorrected)says);
        }

        var bodies = Amending.Bodies(scene, entry, amended);
        return bodies.Count > 0 && says is NoteWritten note && !scene.Inspection.IsClosed
            ? TypedNotes.Entries(scene, workshop, note with { Amends = entry })
            : bodies;
    }

    private static WordsCorrected? Words(PostedForm form, long recording) =>
        form.Required("text", "Write what was said. A note that says nothing can be withdrawn.") is { Length: > 0 } text && form.IsValid ? new(recording, text) : null;

    private static ObservationMade? Observation(PostedForm form, BenchScene scene, ObservationMade before) =>
        PlaceFields.Read(form, scene.Sheet) is { } place
        && RecordFields.Condition(form, place.Check) is { } condition
        && form.IsValid
            ? new(before.Inspection, place.Check.Id, place.Cylinder, condition, form.Ticked("absent"), before.From)
            : null;

    private static ActionDone? Action(PostedForm form, BenchScene scene, ActionDone before) =>
        PlaceFields.Read(form, scene.Sheet) is { } place && RecordFields.Action(form, place.Check) is { } action && form.IsValid
            ? new(before.Inspection, place.Check.Id, place.Cylinder, action, before.From)
            : null;

    private static NoteWritten? Note(PostedForm form, BenchScene scene, NoteWritten before)
    {
        var text = form.Required("text", "Write a few words, or withdraw the note.");
        var check = form.Text("check");
        if (check.Length > 0 && scene.Sheet.Find(check) is null)
        {
            form.Refuse("check", "Choose a check of this sheet.");
        }

        return form.IsValid ? new(before.Inspection, check.Length > 0 ? check : null, text) : null;
    }
}
