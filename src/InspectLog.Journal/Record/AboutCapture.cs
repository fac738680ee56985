using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>Which entries say in words or pictures what a note or photo says. Pure.</summary>
public static class AboutCapture
{
    /// <summary>The note or photo of which a body says something; null where it does not.</summary>
    public static long? Of(EntryBody? body) => body switch
    {
        PhotoMarked marked => marked.Photo,
        AmendableBody { Amends: { } first } => first,
        TranscriptMade transcript => transcript.Recording,
        WordsCorrected corrected => corrected.Recording,
        TranscriptFailed failed => failed.Recording,
        FindingsProposed proposed => proposed.Recording,
        CommandHeard heard => heard.Recording,
        CommandDone done => done.Recording,
        EntryWithdrawn withdrawn => withdrawn.Entry,
        EntryRestated restated => restated.Entry,
        _ => null,
    };
}
