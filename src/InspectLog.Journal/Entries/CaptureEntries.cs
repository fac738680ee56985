using InspectLog.Doubts;

namespace InspectLog.Journal.Entries;

/// <summary>A voice note was kept.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Media">The recording in the media store.</param>
/// <param name="Seconds">Length in seconds.</param>
/// <param name="OpenCheck">Check that was open on the bench; null when none was.</param>
[EntryKind("recording-kept")]
public record RecordingKept(long Inspection, MediaFile Media, double Seconds, string? OpenCheck) : EntryBody;

/// <summary>A voice note was kept that hands-free listening cut out of what it heard. Only such a note can be a
/// command.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Media">The recording in the media store.</param>
/// <param name="Seconds">Length in seconds.</param>
/// <param name="OpenCheck">Check that was open on the bench; null when none was.</param>
[EntryKind("utterance-kept")]
public sealed record UtteranceKept(long Inspection, MediaFile Media, double Seconds, string? OpenCheck)
    : RecordingKept(Inspection, Media, Seconds, OpenCheck);

/// <summary>A recording was transcribed. Machine-made.</summary>
/// <param name="Recording">Sequence of the recording's entry.</param>
/// <param name="Text">The words; empty where no speech was found.</param>
/// <param name="Words">The words with times and probabilities.</param>
/// <param name="SpeechFound">False when the recording holds no speech.</param>
/// <param name="Model">Name of the speech model's file.</param>
/// <param name="ModelSha256">Its SHA-256, lower-case hex.</param>
[EntryKind("transcript-made")]
public sealed record TranscriptMade(
    long Recording,
    string Text,
    IReadOnlyList<TranscriptWord> Words,
    bool SpeechFound,
    string Model,
    string ModelSha256) : EntryBody;

/// <summary>A word of a transcript.</summary>
/// <param name="Text">The word.</param>
/// <param name="Start">Start, seconds.</param>
/// <param name="End">End, seconds.</param>
/// <param name="Probability">The model's probability, 0 to 1.</param>
/// <param name="At">Position of its first character in the text.</param>
public sealed record TranscriptWord(string Text, double Start, double End, double Probability, int At);

/// <summary>A recording could not be transcribed; it is not tried again until somebody asks for it.</summary>
/// <param name="Recording">Sequence of the recording's entry.</param>
/// <param name="Problem">Why, in words.</param>
[EntryKind("transcript-failed")]
public sealed record TranscriptFailed(long Recording, string Problem) : EntryBody;

/// <summary>Somebody does not want a recording transcribed; it stays a note to be played.</summary>
/// <param name="Recording">Sequence of the recording's entry.</param>
[EntryKind("transcript-cancelled")]
public sealed record TranscriptCancelled(long Recording) : EntryBody;

/// <summary>Somebody asks for the transcript of a recording that failed or was cancelled.</summary>
/// <param name="Recording">Sequence of the recording's entry.</param>
[EntryKind("transcript-asked")]
public sealed record TranscriptAsked(long Recording) : EntryBody;

/// <summary>A person put right what was heard: from now on these are the words of the voice note. What was heard stays in its
/// transcript.</summary>
/// <param name="Recording">Sequence of the recording's entry.</param>
/// <param name="Text">The words; never empty.</param>
[EntryKind("words-corrected")]
public sealed record WordsCorrected(long Recording, string Text) : EntryBody;

/// <summary>What a transcript or a typed note seems to say. Machine-made; nothing of it counts until confirmed.</summary>
/// <param name="Recording">Sequence of the entry of the recording or the note.</param>
/// <param name="Findings">The proposals, in the order spoken; may be empty.</param>
[EntryKind("findings-proposed", 2)]
public sealed record FindingsProposed(long Recording, IReadOnlyList<ProposedFinding> Findings) : EntryBody;

/// <summary>One proposal.</summary>
/// <param name="Kind">reading, observation or action.</param>
/// <param name="Check">Check id.</param>
/// <param name="Cylinder">The place, for checks done per cylinder.</param>
/// <param name="Value">Value of a reading, base unit.</param>
/// <param name="Goes">Largest gauge that goes, for a bracket, base unit.</param>
/// <param name="Stops">Smallest gauge that does not, for a bracket, base unit.</param>
/// <param name="Condition">Condition word of an observation.</param>
/// <param name="Negated">Whether the condition was said to be absent.</param>
/// <param name="Action">The action.</param>
/// <param name="Words">The words it came from.</param>
/// <param name="Start">Where they start in the transcript's text.</param>
/// <param name="End">Where they end.</param>
/// <param name="Doubts">Why to look twice, in the order found; empty without doubt.</param>
public sealed record ProposedFinding(
    string Kind,
    string Check,
    int? Cylinder,
    double? Value,
    double? Goes,
    double? Stops,
    string? Condition,
    bool Negated,
    string? Action,
    string Words,
    int Start,
    int End,
    IReadOnlyList<Doubt> Doubts);

/// <summary>Points at one proposal.</summary>
/// <param name="Recording">Sequence of the entry of the recording or the note.</param>
/// <param name="Index">Position among its findings, from 0.</param>
public sealed record FindingReference(long Recording, int Index);

/// <summary>A proposal was dropped: it is not what was meant.</summary>
/// <param name="Finding">Which.</param>
[EntryKind("finding-dropped")]
public sealed record FindingDropped(FindingReference Finding) : EntryBody;

/// <summary>A proposal that was dropped waits to be settled again: it was dropped by mistake.</summary>
/// <param name="Finding">Which.</param>
[EntryKind("finding-reopened")]
public sealed record FindingReopened(FindingReference Finding) : EntryBody;

/// <summary>A photo was kept. The original bytes are in the media store, unchanged.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Media">The photo.</param>
/// <param name="Width">Upright width, pixels.</param>
/// <param name="Height">Upright height, pixels.</param>
/// <param name="Check">Check it belongs to; null for the inspection as a whole.</param>
/// <param name="Cylinder">Place it shows, for checks done per cylinder.</param>
[EntryKind("photo-kept")]
public sealed record PhotoKept(
    long Inspection, MediaFile Media, int Width, int Height, string? Check, int? Cylinder) : AmendableBody
{
    /// <summary>What somebody wrote below it; null where nobody did.</summary>
    public string? Caption { get; init; }

    /// <summary>Sequence of the reading, observation or action it is the evidence of, or of the note in words after which
    /// it was taken: then it is the evidence of what was confirmed from the note at its place. Null for none.</summary>
    public long? Shows { get; init; }
}

/// <summary>A note was typed.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check it belongs to; null for the inspection as a whole.</param>
/// <param name="Text">The words.</param>
[EntryKind("note-written")]
public sealed record NoteWritten(long Inspection, string? Check, string Text) : AmendableBody;
