using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Words;

/// <summary>Which notes stand in a report in their own words.</summary>
public static class NotesInWords
{
    /// <summary>Whether a note keeps its words: typed ones do, and spoken ones that gave no finding or of which a finding
    /// was dropped, so that nothing said is missing. What was said of a check and confirmed stands at the check.
    /// </summary>
    public static bool KeepsItsWords(WordedNote note) => note switch
    {
        { Words: null or "" } => false,
        VoiceNote { Command: not null } => false,
        VoiceNote { Proposals: { } proposals } => proposals.TrueForAll(one => one.IsReadAnew) || proposals.Exists(one => one.CanBeReopened),
        _ => true,
    };

    /// <summary>What was confirmed of a note and under which its words stand, so that they are said once: the first record of it
    /// that counts and belongs to what was done before closing. Null where nothing was: then the note stands by itself.
    /// </summary>
    public static IKept? StandsUnder(InspectionState inspection, WordedNote note) => (note.Proposals ?? [])
        .Where(one => one.State == ProposalState.Confirmed)
        .SelectMany(one => inspection.RecordsOf(one.Reference))
        .Where(kept => !kept.History.IsLater)
        .MinBy(kept => kept.Sequence);
}
