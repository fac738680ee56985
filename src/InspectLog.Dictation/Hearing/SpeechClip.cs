namespace InspectLog.Dictation.Hearing;

/// <summary>A stretch of a recording, in samples.</summary>
internal readonly record struct SpeechSpan(int Start, int End)
{
    public int Length => End - Start;
}

/// <summary>Stretches of speech put end to end, short enough for one pass of the model.</summary>
internal sealed record SpeechClip(IReadOnlyList<SpeechSpan> Spans)
{
    public int Length => Spans.Sum(span => span.Length);

    public double Seconds => (double)Length / PcmAudio.SampleRate;

    /// <summary>The clip's samples, with silence after it where it is shorter than <paramref name="atLeast"/>.</summary>
    public float[] Copy(ReadOnlySpan<float> recording, int atLeast)
    {
        var samples = new float[Math.Max(atLeast, Length)];
        var at = 0;
        foreach (var span in Spans)
        {
            recording[span.Start..span.End].CopyTo(samples.AsSpan(at));
            at += span.Length;
        }

        return samples;
    }

    /// <summary>Turns a time in the clip into the time in the recording, both in seconds.</summary>
    public double ToRecording(double secondsInClip)
    {
        var left = Math.Max(0, secondsInClip * PcmAudio.SampleRate);
        foreach (var span in Spans)
        {
            if (left <= span.Length)
                return (span.Start + left) / PcmAudio.SampleRate;
            left -= span.Length;
        }

        return (double)Spans[^1].End / PcmAudio.SampleRate;
    }
}
