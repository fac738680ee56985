namespace InspectLog.Dictation.Hearing;

/// <summary>How a clip is decoded: how much of the model's 30 s window is used, and how many tokens it may write.</summary>
/// <param name="AudioContext">Encoder positions, 50 a second; null for the whole window.</param>
/// <param name="TokenCap">Most tokens, timestamps included.</param>
internal sealed record DecodingPlan(int? AudioContext, int TokenCap)
{
    // Measured with the shipped model, with silence after the clip and without flash attention between its steps: word
    // error from 256 on is about that from 512 on (105 recorded sentences 4.4 against 4.6 %, 60 of flite 8.4 against 7.8).
    private const int SmallestContext = 256;
    private const int SmallStep = 64;
    private const int LargestInSmallSteps = 384;
    private const int LargestReducedContext = 1280;
    private const int PositionsPerSecond = 50;
    private const int SilenceAfterClip = 128;

    /// <summary>whisper.cpp fills keys up to this for flash attention, and attends to the filling.</summary>
    private const int FlashAttentionStep = 256;

    private const int TokensPerSecond = 12;
    private const int TokensBesides = 16;

    /// <summary>Whether flash attention, which is quicker, gives the same result.</summary>
    public bool WithFlashAttention => AudioContext is not { } context || context % FlashAttentionStep == 0;

    /// <summary>Findings written as they are wanted, for the model to go by; null for none.</summary>
    public string? Examples { get; init; }

    /// <summary>How much bolder each attempt after a failed one is; 0 for a single attempt.</summary>
    public float TemperatureStep { get; init; }

    /// <summary>The plan for a clip of a length.</summary>
    public static DecodingPlan For(double seconds)
    {
        var positions = (int)Math.Ceiling(PositionsPerSecond * seconds) + SilenceAfterClip;

        // Above some length the larger step with flash attention is the cheaper one.
        var step = positions <= LargestInSmallSteps ? SmallStep : FlashAttentionStep;
        var context = Math.Max(SmallestContext, (positions + step - 1) / step * step);
        return new(context > LargestReducedContext ? null : context, TokensBesides + (int)(TokensPerSecond * seconds));
    }

    /// <summary>The same with the whole window, and further attempts where one fails.</summary>
    public DecodingPlan WithWholeWindow() => this with { AudioContext = null, TemperatureStep = 0.2f };
}
