using Whisper.net;

namespace InspectLog.Dictation.Hearing;

/// <summary>Transcribes with a Whisper model on this machine's processor. Loads the model on first use and keeps it;
/// one transcription runs at a time, others wait their turn.</summary>
/// <param name="models">The model files.</param>
public sealed class WhisperSpeech(SpeechModels models) : ISpeechToText, IAsyncDisposable
{
    private const double ShareOfVoiceActivity = 0.05;

    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly Func<string?> _loadLibrary = NativeSpeechLibrary.Load;
    private WhisperDecoder? _decoder;
    private ClipListener? _listener;
    private VoiceActivity? _voiceActivity;
    private (string? Sha256, string Problem)? _refused;

    /// <summary>For tests: with another way to load the native library.</summary>
    internal WhisperSpeech(SpeechModels models, Func<string?> loadLibrary)
        : this(models) => _loadLibrary = loadLibrary;

    /// <inheritdoc/>
    /// <remarks>The first call hashes the model files (a fraction of a second); later calls do so only when they changed.</remarks>
    public SpeechReadiness Readiness
    {
        get
        {
            var files = models.Check();
            var problem = files.Problem ?? RefusalOf(files.ModelSha256) ?? _loadLibrary();
            return files with { Ready = problem is null, Problem = problem };
        }
    }

    /// <summary>Clips that were not heard clearly and heard again, and those of them that needed the model's whole window.</summary>
    public (int HeardAgain, int WithWholeWindow) Again => (_listener?.HeardAgain ?? 0, _listener?.WithWholeWindow ?? 0);

    /// <inheritdoc/>
    public async Task<Transcript> TranscribeAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(audio);
        await _turn.WaitAsync(cancellationToken);
        try
        {
            var (listener, voiceActivity) = await Task.Run(Load, cancellationToken);
            return await Task.Run(() => HearAsync(listener, voiceActivity, audio, examples, progress, cancellationToken), cancellationToken);
        }
        catch (WhisperProcessingException e)
        {
            throw new RecordingFailedException($"The speech model failed on this recording ({e.Message}). It is kept and can be transcribed later.", e);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    /// <remarks>Runs it over silence.</remarks>
    public async Task WarmUpAsync(CancellationToken cancellationToken)
    {
        await _turn.WaitAsync(cancellationToken);
        try
        {
            var (listener, _) = await Task.Run(Load, cancellationToken);
            await Task.Run(() => listener.WarmUpAsync(cancellationToken), cancellationToken);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>Waits for the running transcription, then frees the models.</summary>
    public async ValueTask DisposeAsync()
    {
        await _turn.WaitAsync();
        _decoder?.Dispose();
        _voiceActivity?.Dispose();
        _turn.Dispose();
    }

    private static async Task<Transcript> HearAsync(
        ClipListener listener,
        VoiceActivity voiceActivity,
        PcmAudio audio,
        string? examples,
        IProgress<double>? progress,
        CancellationToken cancellationToken)
    {
        progress?.Report(0);
        var speech = await voiceActivity.FindAsync(audio.Samples, cancellationToken);
        var clips = ClipCutter.Cut(audio.Samples.Span, speech);
        progress?.Report(ShareOfVoiceActivity);

        var composer = new TranscriptComposer(audio.Duration);
        var total = clips.Sum(clip => (double)clip.Length);
        var done = 0.0;
        foreach (var clip in clips)
        {
            composer.Add(clip, await listener.HearAsync(clip, audio.Samples, examples, cancellationToken));
            done += clip.Length;
            progress?.Report(ShareOfVoiceActivity + ((1 - ShareOfVoiceActivity) * done / total));
        }

        progress?.Report(1);
        return composer.Build();
    }

    /// <summary>Why the model was refused at load, as long as the file is still that one.</summary>
    private string? RefusalOf(string? sha256) => _refused is { } refused && refused.Sha256 == sha256 ? refused.Problem : null;

    private (ClipListener Listener, VoiceActivity VoiceActivity) Load()
    {
        if (_listener is not null && _voiceActivity is not null)
            return (_listener, _voiceActivity);
        var readiness = Readiness;
        if (readiness.Problem is { } problem)
            throw new SpeechUnavailableException(problem);

        try
        {
            _voiceActivity ??= new VoiceActivity(models.VoiceActivity.Path);
            _decoder ??= new WhisperDecoder(models.Whisper.Path);
            _listener = new ClipListener(_decoder);
            return (_listener, _voiceActivity);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            var refusal = $"The speech model {models.Whisper.Name} cannot be loaded ({e.Message}). Use the model that comes with the "
                + "program, or another whisper.cpp model. Recordings are kept and can be transcribed later.";
            _refused = (readiness.ModelSha256, refusal);
            throw new SpeechUnavailableException(refusal, e);
        }
    }
}
