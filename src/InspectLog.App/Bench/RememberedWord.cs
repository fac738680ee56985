using InspectLog.App.Forms;
using InspectLog.App.OwnWords;
using InspectLog.Dictation.Understanding;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>A word of the workshop's own that a person wants remembered from a correction. Nothing is learned unasked.
/// </summary>
public static class RememberedWord
{
    /// <summary>The form's word for a phrase that means what was seen, and not the check.</summary>
    public const string WhatWasSeen = "seen";

    /// <summary>The word, or null where none was asked for, where the proposal is settled already, or with the errors
    /// noted on the form.</summary>
    public static OwnWordAdded? Read(PostedForm form, BenchScene scene, WorkshopState workshop, ProposalCard card)
    {
        if (!form.Ticked("remember") || card.State != ProposalState.Open || !form.IsValid)
        {
            return null;
        }

        var condition = card.First.Finding.Kind == "observation" && form.Text("meaning") == WhatWasSeen ? form.Text("condition") : null;
        return WordForm.Read(form, workshop, scene.Sheet, form.Text("check"), condition);
    }

    /// <summary>The words a proposal came from that nobody told the program about, to begin with; those of the whole
    /// note where it has none.</summary>
    public static string Unknown(BenchScene scene, WorkshopState workshop, long recording, ProposalCard card)
    {
        var vocabulary = new OwnVocabulary(scene.Sheet, WorkshopWords.For(workshop, scene.Sheet));
        var unknown = vocabulary.UnknownIn(card.First.Finding.Words);
        return unknown.Length > 0 ? unknown
            : vocabulary.UnknownIn(scene.Inspection.FindNote(recording)?.Words ?? "");
    }
}
