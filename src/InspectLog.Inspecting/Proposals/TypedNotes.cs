using InspectLog.Dictation.Understanding;
using InspectLog.Doubts;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Reads typed notes, and spoken ones whose words a person put right, for findings as spoken ones are read. Pure.
/// </summary>
public static class TypedNotes
{
    /// <summary>The note, and what it seems to say of the sheet's checks.</summary>
    /// <param name="scene">The inspection it is about to join.</param>
    /// <param name="workshop">The workshop, for its own words.</param>
    /// <param name="note">The note; where it amends another one, what that one says is read anew.</param>
    public static IReadOnlyList<EntryBody> Entries(BenchScene scene, WorkshopState workshop, NoteWritten note)
    {
        return [note, Read(scene, workshop, note.Amends ?? scene.Vehicle.NextSequence, note.Text, note.Check)];
    }

    /// <summary>The words of a voice note put right, and what they seem to say; none where they are its words already.
    /// Unless nothing can be confirmed any more, what was open of the words before is no longer meant.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="workshop">The workshop, for its own words.</param>
    /// <param name="corrected">The words.</param>
    public static IReadOnlyList<EntryBody> Entries(BenchScene scene, WorkshopState workshop, WordsCorrected corrected) =>
        scene.Inspection.Find(corrected.Recording) is not VoiceNote { CanBeCorrected: true } note || note.Words == corrected.Text ? []
        : scene.Inspection.IsClosed ? [corrected]
        : [corrected, Read(scene, workshop, note.Sequence, corrected.Text, note.OpenCheck)];

    private static FindingsProposed Read(BenchScene scene, WorkshopState workshop, long about, string text, string? check)
    {
        var findings = new FindingReader(scene.Sheet, WorkshopWords.For(workshop, scene.Sheet)).Read(text, check);
        var confirmed = Confirmed(scene, about);
        return new(about, [.. findings.Select(ProposedFindings.From).Where(one => !confirmed.Contains(WhatItSays(one)))]);
    }

    /// <summary>What was confirmed of the note before it was put right, and still counts, is not asked for again.</summary>
    private static HashSet<ProposedFinding> Confirmed(BenchScene scene, long note) =>
    [
        .. (scene.Inspection.FindNote(note)?.Proposals ?? [])
            .Where(one => one.State == ProposalState.Confirmed && scene.Inspection.RecordsOf(one.Reference).Any())
            .Select(one => WhatItSays(one.Finding)),
    ];

    private static readonly IReadOnlyList<Doubt> NoDoubts = [];

    private static ProposedFinding WhatItSays(ProposedFinding finding) =>
        finding with { Words = "", Start = 0, End = 0, Doubts = NoDoubts };
}
