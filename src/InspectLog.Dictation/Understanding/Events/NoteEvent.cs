using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>The sorts of event.</summary>
internal enum EventKind
{
    /// <summary>A number that may be a reading.</summary>
    Value,

    /// <summary>Words of a condition.</summary>
    Condition,

    /// <summary>Words of something done.</summary>
    Action,

    /// <summary>Words that say of something else what was just said, or yes or no to it.</summary>
    Answer,

    /// <summary>A condition or action said once of two parts.</summary>
    Again,
}

/// <summary>A place in a text that may say a finding.</summary>
internal sealed record NoteEvent(EventKind Kind, int First, int Next)
{
    public NumberSegment? Number { get; init; }

    public Phrase<Meaning>? Condition { get; init; }

    public Phrase<string>? Action { get; init; }

    /// <summary>For an answer: which sort of word it is.</summary>
    public SpeechRole Role { get; init; }

    /// <summary>For what is said once of two parts: what is said.</summary>
    public NoteEvent? Of { get; init; }
}
