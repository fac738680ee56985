namespace InspectLog.Dictation.Hearing;

/// <summary>Hears one clip: once, as cheaply as its length allows; again in other ways where that is in doubt; and with
/// the model's whole window where everything so far looks like a decoder that lost its way.</summary>
internal sealed class ClipListener(WhisperDecoder decoder)
{
    /// <summary>The model sees silence after shorter clips; native code returns nothing for less than 0.1 s.</summary>
    private const int ShortestBuffer = PcmAudio.SampleRate;

    /// <summary>Played slower, the model hears the same words anew, and in noise often better.</summary>
    private const double Slower = 1.08;

    /// <summary>Clips that were in doubt and heard again.</summary>
    public int HeardAgain { get; private set; }

    /// <summary>Clips that had to be decoded with the whole window.</summary>
    public int WithWholeWindow { get; private set; }

    /// <summary>Hears a clip of a recording.</summary>
    /// <param name="clip">The clip.</param>
    /// <param name="recording">The recording's samples.</param>
    /// <param name="examples">Findings as they are wanted, for when the clip is heard again; null for none.</param>
    /// <param name="cancellationToken">Stops at the next step.</param>
    public async Task<DecodedClip> HearAsync(
        SpeechClip clip, ReadOnlyMemory<float> recording, string? examples, CancellationToken cancellationToken)
    {
        var samples = clip.Copy(recording.Span, ShortestBuffer);
        var plan = DecodingPlan.For(clip.Seconds);
        var heard = await decoder.DecodeAsync(samples, plan, cancellationToken);
        if (heard.IsClear(clip.Seconds, plan.TokenCap))
            return heard;

        HeardAgain++;
        var hearings = new Hearings(heard, examples);
        hearings.Add(await HearSlowerAsync(samples, clip.Seconds, examples, cancellationToken));
        if (examples is not null && !hearings.Best.IsClear(clip.Seconds, plan.TokenCap))
            hearings.Add(await decoder.DecodeAsync(samples, plan with { Examples = examples }, cancellationToken));
        if (hearings.Best.LooksWrong(clip.Seconds, plan.TokenCap))
        {
            WithWholeWindow++;
            hearings.Add(await decoder.DecodeAsync(samples, plan.WithWholeWindow(), cancellationToken));
        }

        return hearings.BestWithDoubt();
    }

    /// <summary>One pass each way over silence, after which the first recording is as quick as the next.</summary>
    public async Task WarmUpAsync(CancellationToken cancellationToken)
    {
        foreach (var seconds in new[] { 1, 5, 7 })
            await decoder.DecodeAsync(new float[seconds * PcmAudio.SampleRate], DecodingPlan.For(seconds), cancellationToken);
    }

    private async Task<DecodedClip> HearSlowerAsync(float[] samples, double seconds, string? examples, CancellationToken cancellationToken)
    {
        var plan = DecodingPlan.For(seconds * Slower) with { Examples = examples };
        var heard = await decoder.DecodeAsync(Stretch(samples), plan, cancellationToken);
        return heard with { Pieces = [.. heard.Pieces.Select(piece => piece with { Start = piece.Start / Slower, End = piece.End / Slower })] };
    }

    private static float[] Stretch(float[] samples)
    {
        var stretched = new float[(int)((samples.Length - 1) * Slower)];
        for (var i = 0; i < stretched.Length; i++)
        {
            var (before, share) = ((int)(i / Slower), (float)((i / Slower) % 1));
            stretched[i] = (samples[before] * (1 - share)) + (samples[before + 1] * share);
        }

        return stretched;
    }
}
