using InspectLog.Dictation.Understanding;
using InspectLog.Doubts;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Reads typed notes for findings as spoken ones are read. Pure.</summary>
public static class TypedNotes
{
    /// <summary>The note, and what it seems to say of the sheet's checks.</summary>
    /// <param name="scene">The inspection it is about to join.</param>
    /// <param name="workshop">The workshop, for its own words.</param>
    /// <param name="note">The note; where it amends another one, what that one says is read anew.</param>
    public static IReadOnlyList<EntryBody> Entries(BenchScene scene, WorkshopState workshop, NoteWritten note)
    {
        var reader = new FindingReader(scene.Sheet, WorkshopWords.For(workshop, scene.Sheet));
        var findings = reader.Read(note.Text, note.Check);
        var about = note.Amends ?? scene.Vehicle.NextSequence;
        var confirmed = Confirmed(scene, about);
        var proposed = findings.Select(ProposedFindings.From).Where(one => !confirmed.Contains(WhatItSays(one)));
        return [note, new FindingsProposed(about, [.. proposed])];
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
