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
        VoiceNote { Proposals: { } proposals } => proposals.Count == 0 || proposals.Exists(one => one.State == ProposalState.Dropped),
        _ => true,
    };
}
