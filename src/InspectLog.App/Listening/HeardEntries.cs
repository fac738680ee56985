using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Listening;

/// <summary>The entries a transcript leads to. Pure.</summary>
public static class HeardEntries
{
    /// <summary>The transcript, and what it seems to say of the sheet's checks.</summary>
    /// <param name="recording">Sequence of the recording's entry.</param>
    /// <param name="kept">The recording.</param>
    /// <param name="sheetId">The inspection's sheet.</param>
    /// <param name="transcript">What was heard.</param>
    /// <param name="model">Name of the speech model's file.</param>
    /// <param name="modelSha256">Its SHA-256.</param>
    public static IReadOnlyList<EntryBody> Of(
        long recording, RecordingKept kept, string sheetId, Transcript transcript, string model, string modelSha256)
    {
        var made = new TranscriptMade(
            recording,
            transcript.Text,
            [.. transcript.Words.Select(word => new TranscriptWord(
                word.Text, word.Start, word.End, word.Probability, word.At))],
            transcript.SpeechFound,
            model,
            modelSha256);
        var findings = BuiltInSheets.Find(sheetId) is { } sheet
            ? new FindingReader(sheet).Read(transcript, kept.OpenCheck)
            : [];
        return [made, new FindingsProposed(recording, [.. findings.Select(Proposals.From)])];
    }
}
