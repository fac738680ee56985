using Whisper.net;

namespace InspectLog.Dictation.Hearing;

/// <summary>Runs the Whisper model over samples, once for each call. Holds the loaded model.</summary>
internal sealed class WhisperDecoder : IDisposable
{
    // Ids from here on are markers and timestamps in the multilingual vocabulary, one lower in the English-only one;
    // the last ordinary token of the former never occurs in English.
    private const int FirstMarker = 50_256;

    // Flash attention is a property of a loaded model, so the model is loaded once with it and once without.
    private readonly WhisperFactory _plain;
    private readonly WhisperFactory _withFlashAttention;

    /// <summary>Loads the model.</summary>
    /// <exception cref="WhisperModelLoadException">The file is no model whisper.cpp can load.</exception>
    public WhisperDecoder(string modelPath)
    {
        _plain = Load(modelPath, flashAttention: false);
        _withFlashAttention = Load(modelPath, flashAttention: true);
    }

    /// <summary>Writes down what is said in the samples.</summary>
    public async Task<DecodedClip> DecodeAsync(float[] samples, DecodingPlan plan, CancellationToken cancellationToken)
    {
        await using var processor = Build(plan);
        var text = string.Empty;
        var pieces = new List<TextPiece>();
        await foreach (var segment in processor.ProcessAsync(samples, cancellationToken))
        {
            text += segment.Text;
            pieces.AddRange(segment.Tokens.Where(IsText).Select(ToPiece));
        }

        return new DecodedClip(text.Trim(), pieces);
    }

    public void Dispose()
    {
        _plain.Dispose();
        _withFlashAttention.Dispose();
    }

    private static WhisperFactory Load(string modelPath, bool flashAttention)
    {
        var factory = WhisperFactory.FromPath(modelPath, new WhisperFactoryOptions { UseGpu = false, UseFlashAttention = flashAttention });

        // The factory keeps a failure to itself until something is built.
        factory.CreateBuilder().Build().Dispose();
        return factory;
    }

    private WhisperProcessor Build(DecodingPlan plan)
    {
        var builder = (plan.WithFlashAttention ? _withFlashAttention : _plain).CreateBuilder()
            .WithLanguage("en")
            .WithThreads(Threads)
            .WithSingleSegment()
            .WithNoContext()
            .WithProbabilities()
            .WithTokenTimestamps()
            .WithTemperature(0)
            .WithTemperatureInc(plan.TemperatureStep)
            .WithMaxTokensPerSegment(plan.TokenCap);
        if (plan.AudioContext is { } context)
            builder.WithAudioContextSize(context);
        if (plan.Examples is { } examples)
            builder.WithPrompt(examples);
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
