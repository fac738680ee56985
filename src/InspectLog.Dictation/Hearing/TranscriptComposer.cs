using System.Text;

namespace InspectLog.Dictation.Hearing;

/// <summary>Puts the clips of a recording together to one transcript.</summary>
internal sealed class TranscriptComposer(TimeSpan duration)
{
    private readonly StringBuilder _text = new();
    private readonly List<HeardWord> _words = [];
    private double _latest;

    /// <summary>Adds the words of the next clip.</summary>
    public void Add(SpeechClip clip, DecodedClip decoded)
    {
        foreach (var word in SoundRemarks.Drop(WordJoiner.Join(decoded)))
            Add(clip, word);
    }

    /// <summary>The transcript so far. Sounds that passed for speech, but in which the model found no words, are none.</summary>
    public Transcript Build() => new(_text.ToString(), [.. _words], SpeechFound: _words.Count > 0, duration);

    private void Add(SpeechClip clip, HeardWord word)
    {
        if (_text.Length > 0)
            _text.Append(' ');

        // The model's word times are estimates and may overlap or run over the end.
        var start = Within(clip.ToRecording(word.Start));
        var end = Math.Max(start, Within(clip.ToRecording(word.End)));
        _latest = start;
        _words.Add(word with { Start = start, End = end, At = _text.Length });
        _text.Append(word.Text);
    }

    private double Within(double seconds) => Math.Clamp(seconds, _latest, Math.Max(_latest, duration.TotalSeconds));
}
