using InspectLog.Checks;
using InspectLog.Dictation.Control;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.Entries;

namespace InspectLog.Inspecting.Proposals;

/// <summary>The entries a transcript leads to. Pure.</summary>
public static class HeardEntries
{
    /// <summary>The transcript, and what it seems to say of the sheet's checks; of a hands-free utterance, the command it
    /// is.</summary>
    /// <param name="recording">Sequence of the recording's entry.</param>
    /// <param name="kept">The recording.</param>
    /// <param name="sheet">The inspection's sheet.</param>
    /// <param name="ownWords">The workshop's own words for the sheet.</param>
    /// <param name="transcript">What was heard.</param>
    /// <param name="model">Name of the speech model's file.</param>
    /// <param name="modelSha256">Its SHA-256.</param>
    public static IReadOnlyList<EntryBody> Of(
        long recording,
        RecordingKept kept,
        CheckSheet sheet,
        IReadOnlyList<OwnWord> ownWords,
        Transcript transcript,
        string model,
        string modelSha256)
    {
        var made = new TranscriptMade(
            recording,
            transcript.Text,
            [.. transcript.Words.Select(word => new TranscriptWord(
                word.Text, word.Start, word.End, word.Probability, word.At))],
            transcript.SpeechFound,
            model,
            modelSha256);
        var command = kept is UtteranceKept ? ControlReader.Read(transcript) : null;
        if (command is { Doubt: null })
        {
            return [made, new FindingsProposed(recording, []), SpokenCommands.From(recording, command)];
        }

        var findings = new FindingReader(sheet, ownWords).Read(transcript, kept.OpenCheck);
        var proposed = new FindingsProposed(recording, [.. findings.Select(ProposedFindings.From)]);

        // What only sounds like a command and says a finding is the finding.
        return command is not null && findings.Count == 0
            ? [made, proposed, SpokenCommands.From(recording, command)]
            : [made, proposed];
    }
}
