namespace InspectLog.Dictation.Hearing;

/// <summary>How a clip is decoded: how much of the model's 30 s window is used, and how many tokens it may write.</summary>
/// <param name="AudioContext">Encoder positions, 50 a second; null for the whole window.</param>
/// <param name="TokenCap">Most tokens, timestamps included.</param>
internal sealed record DecodingPlan(int? AudioContext, int TokenCap)
{
    // Measured with the shipped model: below 512 the decoder starts to repeat itself. Flash attention needs a
    // multiple of 256 (whisper.cpp pads keys to that and attends to the padding otherwise).
    private const int SmallestContext = 512;
    private const int ContextStep = 256;
    private const int LargestReducedContext = 1280;
    private const int PositionsPerSecond = 50;
    private const int SilenceAfterClip = 128;

    private const int TokensPerSecond = 12;
    private const int TokensBesides = 16;

    /// <summary>The plan for a clip of a length.</summary>
    public static DecodingPlan For(double seconds)
    {
        var positions = (int)Math.Ceiling(PositionsPerSecond * seconds) + SilenceAfterClip;
        var context = Math.Max(SmallestContext, (positions + ContextStep - 1) / ContextStep * ContextStep);
        return new(context > LargestReducedContext ? null : context, TokensBesides + (int)(TokensPerSecond * seconds));
    }

    /// <summary>The same with the whole window.</summary>
    public DecodingPlan WithWholeWindow() => this with { AudioContext = null };
}
