using InspectLog.App.Ui;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>What became of a voice note, in words.</summary>
public static class VoiceNoteWords
{
    /// <summary>Its state in a few words, beside its time.</summary>
    public static string State(VoiceNote note, IReadOnlyList<ProposalCard> cards, SpeechReadiness speech) => note switch
    {
        { IsSetAside: true } => "kept, not read",
        { Transcript: null } => speech.Ready ? "kept, being read" : "kept, to be read later",
        { Transcript.SpeechFound: false } => "kept, no speech heard",
        { Command: { } command } => $"a command: {SpokenCommands.Phrase(command.Command)}",
        _ when cards.Count == 0 => "a note",
        _ when Open(cards) is var open and > 0 => $"understood, {open} to settle",
        _ => "settled",
    };

    /// <summary>The same as a sentence for people who listen; null while there is nothing to hear yet.</summary>
    public static string? News(VoiceNote note, IReadOnlyList<ProposalCard> cards)
    {
        var name = $"Voice note of {Times.Clock(note.Time)}";
        return note switch
        {
            { Failure: not null } => $"{name} could not be read. The recording is kept.",
            { Transcript: null } => null,
            { Transcript.SpeechFound: false } => $"{name}: no speech heard.",
            { Command: not null } => Answer(note),
            _ when cards.Count == 0 => $"{name} is read. It gave no finding and stays a note.",
            _ when Open(cards) is var open and > 0 => $"{name} is understood: {open} to settle.",
            _ => null,
        };
    }

    /// <summary>The answer to a command; null while it waits and for notes that are none.</summary>
    public static string? Answer(VoiceNote note) =>
        note.Command is not null && HandsFreeTurn.Of(note, []).Answer is { Length: > 0 } answer ? answer : null;

    private static int Open(IReadOnlyList<ProposalCard> cards) => cards.Count(card => card.State == ProposalState.Open);
}
