using InspectLog.Checks;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.ByVoice;

/// <summary>One utterance and the answer to it.</summary>
/// <param name="Recording">Sequence of its entry.</param>
/// <param name="State">What it is, in a word or two: "understood", "confirmed", "kept as a note".</param>
/// <param name="Outcome">The worst decision in it, for the drawing beside the words.</param>
/// <param name="Answer">What the person is told; empty while it is being read and where no speech was in it.</param>
/// <param name="OpensCheck">The check it opened; null otherwise.</param>
/// <param name="Stops">Whether it ends the listening.</param>
public sealed record HandsFreeTurn(
    long Recording, string State, PlaceOutcome Outcome, string Answer, string? OpensCheck = null, bool Stops = false)
{
    /// <summary>Whether it has no answer yet.</summary>
    public bool IsThinking { get; private init; }

    /// <summary>The turn of a note. Pure.</summary>
    public static HandsFreeTurn Of(VoiceNote note, BenchScene scene, WorkshopState workshop) =>
        Of(note, ProposalCards.Of(note, scene, workshop));

    /// <summary>The turn of a note, from its cards. Pure.</summary>
    public static HandsFreeTurn Of(VoiceNote note, IReadOnlyList<ProposalCard> cards) => note switch
    {
        { Done: { } done } => new(
            note.Sequence, WordFor(done.Outcome), PlaceOutcome.Recorded, done.Answer, done.Check, done.Outcome == CommandOutcome.Stopped),
        { Command: { Doubt: { } doubt } heard } => new(
            note.Sequence, "not sure", PlaceOutcome.Doubtful, $"Did you mean \u201C{SpokenCommands.Phrase(heard.Command)}\u201D? {DoubtWords.OfCommand(doubt)} Say it again."),
        { IsSetAside: true } => new(
            note.Sequence, "kept, not read", PlaceOutcome.Doubtful, "That was not read. The recording is kept."),
        { Transcript: null } or { Command: not null } => new(
            note.Sequence, "kept, thinking", PlaceOutcome.None, "") { IsThinking = true },
        { Transcript.SpeechFound: false } => new(note.Sequence, "kept, no speech heard", PlaceOutcome.None, ""),
        _ when cards.Count == 0 => new(
            note.Sequence, "kept as a note", PlaceOutcome.None, $"Kept as a note: {note.Words?.Trim()}"),
        _ => new(note.Sequence, "understood", cards.Max(OutcomeOf), ReadBack.Understood(cards)),
    };

    private static string WordFor(CommandOutcome outcome) => outcome switch
    {
        CommandOutcome.Confirmed => "confirmed",
        CommandOutcome.Dropped => "dropped",
        CommandOutcome.TakenBack => "taken back",
        CommandOutcome.Moved => "next check",
        CommandOutcome.Repeated => "again",
        CommandOutcome.Stopped => "stopped",
        _ => "nothing done",
    };

    private static PlaceOutcome OutcomeOf(ProposalCard card) => card switch
    {
        { Preview.Decision: Decision.Fail or Decision.ProvenNonConforming } => PlaceOutcome.Bad,
        { IsDoubtful: true } or { Check: null } or { NeedsPlace: true } or { NotShown: not null } => PlaceOutcome.Doubtful,
        { Preview: { } preview } => preview.Decision.Outcome(),
        _ => PlaceOutcome.Recorded,
    };
}
