namespace InspectLog.Dictation.Hearing;

/// <summary>What was heard in a recording. Machine-made: a draft until a person has confirmed what it says.</summary>
/// <param name="Text">The words as the model wrote them; empty where no speech was found.</param>
/// <param name="Words">The words of <paramref name="Text"/> in order.</param>
/// <param name="SpeechFound">Whether somebody spoke: the voice-activity model found speech and the other one words in it.</param>
/// <param name="Duration">Length of the recording.</param>
public sealed record Transcript(string Text, IReadOnlyList<HeardWord> Words, bool SpeechFound, TimeSpan Duration);

/// <summary>One heard word.</summary>
/// <param name="Text">The word with the punctuation the model attached.</param>
/// <param name="Start">Start in seconds from the beginning of the recording.</param>
/// <param name="End">End in seconds from the beginning of the recording.</param>
/// <param name="Probability">The model's own probability, 0 to 1; the lowest of the word's pieces.</param>
/// <param name="At">Position of the word's first character in the transcript's text.</param>
public sealed record HeardWord(string Text, double Start, double End, double Probability, int At);
