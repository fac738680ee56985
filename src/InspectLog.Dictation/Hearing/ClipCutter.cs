namespace InspectLog.Dictation.Hearing;

/// <summary>Cuts the speech of a recording into clips that fit the model's window, at pauses where there are any.</summary>
internal static class ClipCutter
{
    /// <summary>A little under the model's 30 s, so that it hears the end.</summary>
    public const int LongestClip = 28 * PcmAudio.SampleRate;

    /// <summary>Stretches across a longer pause share a clip only up to this length, which the smallest window holds:
    /// more in one pass is no cheaper, and the model's word times grow vaguer.</summary>
    private const int LongestJoined = 15 * PcmAudio.SampleRate / 2;

    /// <summary>Shorter pauses stay in: they carry rhythm. Longer ones are cut out: the model invents words in them.</summary>
    private const int LongestPauseKept = PcmAudio.SampleRate;

    private const int QuietStretch = PcmAudio.SampleRate / 5;

    public static IReadOnlyList<SpeechClip> Cut(ReadOnlySpan<float> recording, IEnumerable<SpeechSpan> speech)
    {
        var clips = new List<SpeechClip>();
        var open = new List<SpeechSpan>();
        foreach (var span in SplitLong(recording, Join(speech)))
        {
            if (open.Count > 0 && open.Sum(s => s.Length) + span.Length > LongestJoined)
            {
                clips.Add(new SpeechClip(open));
                open = [];
            }

            open.Add(span);
        }

        if (open.Count > 0)
            clips.Add(new SpeechClip(open));
        return clips;
    }

    /// <summary>Joins stretches across short pauses, as long as one clip still holds them.</summary>
    private static List<SpeechSpan> Join(IEnumerable<SpeechSpan> speech)
    {
        var joined = new List<SpeechSpan>();
        foreach (var span in speech.Where(s => s.Length > 0))
        {
            var fits = joined.Count > 0
                && span.Start - joined[^1].End <= LongestPauseKept
                && span.End - joined[^1].Start <= LongestClip;
            if (fits)
                joined[^1] = joined[^1] with { End = Math.Max(joined[^1].End, span.End) };
            else
                joined.Add(span);
        }

        return joined;
    }

    /// <summary>Splits stretches without a pause that are longer than a clip, in their quietest fifth of a second.</summary>
    private static List<SpeechSpan> SplitLong(ReadOnlySpan<float> recording, IEnumerable<SpeechSpan> spans)
    {
        var split = new List<SpeechSpan>();
        foreach (var span in spans)
        {
            var rest = span;
            while (rest.Length > LongestClip)
            {
                var from = rest.Start + (LongestClip * 2 / 3);
                var cut = from + QuietestIn(recording[from..(rest.Start + LongestClip)]);
                split.Add(rest with { End = cut });
                rest = rest with { Start = cut };
            }

            split.Add(rest);
        }

        return split;
    }

    private static int QuietestIn(ReadOnlySpan<float> samples)
    {
        var (best, bestEnergy) = (samples.Length / 2, double.MaxValue);
        for (var at = 0; at + QuietStretch <= samples.Length; at += QuietStretch / 4)
        {
            var energy = 0.0;
            foreach (var sample in samples.Slice(at, QuietStretch))
                energy += sample * sample;
            if (energy < bestEnergy)
                (best, bestEnergy) = (at + (QuietStretch / 2), energy);
        }

        return best;
    }
}
