using Whisper.net;

namespace InspectLog.Dictation.Hearing;

/// <summary>Runs the Whisper model over one clip at a time. Holds the loaded model.</summary>
internal sealed class WhisperDecoder : IDisposable
{
    /// <summary>The model sees silence after shorter clips; native code returns nothing for less than 0.1 s.</summary>
    private const int ShortestBuffer = PcmAudio.SampleRate;

    private const float TemperatureStep = 0.2f;

    // Ids from here on are markers and timestamps in the multilingual vocabulary, one lower in the English-only one;
    // the last ordinary token of the former never occurs in English.
    private const int FirstMarker = 50_256;

    private readonly WhisperFactory _factory;

    /// <summary>Loads the model.</summary>
    /// <exception cref="WhisperModelLoadException">The file is no model whisper.cpp can load.</exception>
    public WhisperDecoder(string modelPath)
    {
        _factory = WhisperFactory.FromPath(modelPath, new WhisperFactoryOptions { UseGpu = false, UseFlashAttention = true });

        // The factory keeps a failure to itself until something is built.
        _factory.CreateBuilder().Build().Dispose();
    }

    /// <summary>Times a result looked wrong and the clip was decoded again with the whole window.</summary>
    public int Redone { get; private set; }

    /// <summary>Decodes a clip: once at the window it needs, again with the whole window if that looks wrong.</summary>
    public async Task<DecodedClip> DecodeAsync(SpeechClip clip, ReadOnlyMemory<float> recording, CancellationToken cancellationToken)
    {
        var samples = clip.Copy(recording.Span, ShortestBuffer);
        var plan = DecodingPlan.For(clip.Seconds);
        var first = await RunAsync(samples, plan, temperatureStep: 0, cancellationToken);
        if (!first.LooksWrong(clip.Seconds, plan.TokenCap))
            return first;

        Redone++;
        var second = await RunAsync(samples, plan.WithWholeWindow(), TemperatureStep, cancellationToken);
        return Better(first, second);
    }

    /// <summary>One pass over silence, after which the first recording is as quick as the next.</summary>
    public Task WarmUpAsync(CancellationToken cancellationToken) =>
        Task.Run(() => RunAsync(new float[ShortestBuffer], DecodingPlan.For(1), temperatureStep: 0, cancellationToken), cancellationToken);

    public void Dispose() => _factory.Dispose();

    private static DecodedClip Better(DecodedClip first, DecodedClip second) =>
        (first.Loops(), second.Loops()) switch
        {
            (true, false) => second,
            (false, true) => first,
            _ => second.MeanLogProbability >= first.MeanLogProbability ? second : first,
        };

    private async Task<DecodedClip> RunAsync(float[] samples, DecodingPlan plan, float temperatureStep, CancellationToken cancellationToken)
    {
        await using var processor = Build(plan, temperatureStep);
        var text = string.Empty;
        var pieces = new List<TextPiece>();
        await foreach (var segment in processor.ProcessAsync(samples, cancellationToken))
        {
            text += segment.Text;
            pieces.AddRange(segment.Tokens.Where(IsText).Select(ToPiece));
        }

        return new DecodedClip(text.Trim(), pieces);
    }

    private WhisperProcessor Build(DecodingPlan plan, float temperatureStep)
    {
        var builder = _factory.CreateBuilder()
            .WithLanguage("en")
            .WithThreads(Threads)
            .WithSingleSegment()
            .WithNoContext()
            .WithProbabilities()
            .WithTokenTimestamps()
            .WithTemperature(0)
            .WithTemperatureInc(temperatureStep)
            .WithMaxTokensPerSegment(plan.TokenCap);
        if (plan.AudioContext is { } context)
            builder.WithAudioContextSize(context);
        return builder.WithGreedySamplingStrategy(_ => { }).Build();
    }

    // On larger machines half the logical processors are second threads of the same cores, which do not help here.
    private static int Threads => Environment.ProcessorCount <= 4 ? Environment.ProcessorCount : Math.Min(8, Environment.ProcessorCount / 2);

    private static bool IsText(WhisperToken token) =>
        token.Id < FirstMarker && token.Text is { Length: > 0 } text && !text.StartsWith("[_", StringComparison.Ordinal);

    // Native times are in hundredths of a second.
    private static TextPiece ToPiece(WhisperToken token) =>
        new(token.Text!, token.Start / 100.0, token.End / 100.0, Math.Log(Math.Max(token.Probability, 1e-9)));
}
