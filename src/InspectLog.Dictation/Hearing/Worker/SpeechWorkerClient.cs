using System.ComponentModel;

namespace InspectLog.Dictation.Hearing.Worker;

/// <summary>Transcribes in a process of its own, so that a crash in native code or a decode that never ends takes nothing
/// else down. The worker is started when needed, kept, and replaced when it stops; the recording is then tried again.</summary>
/// <param name="command">How to start the worker, which runs <see cref="SpeechWorkerServer"/>.</param>
/// <param name="models">The model files the worker uses, for <see cref="Readiness"/>.</param>
/// <param name="patience">How patient to be with it.</param>
/// <param name="time">The clock.</param>
public sealed class SpeechWorkerClient(
    SpeechWorkerCommand command, SpeechModels models, SpeechWorkerPatience patience, TimeProvider time) : ISpeechToText, IAsyncDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);
    private SpeechWorkerProcess? _worker;
    private ITimer? _nextStart;
    private volatile string? _problem;
    private bool _disposed;

    /// <inheritdoc/>
    public event EventHandler? BecameReady;

    /// <inheritdoc/>
    /// <remarks>Of the model files as they are now, and of what the last worker said.</remarks>
    public SpeechReadiness Readiness
    {
        get
        {
            var files = models.Check();
            return files.Ready && _problem is { } problem ? files with { Ready = false, Problem = problem } : files;
        }
    }

    /// <summary>Workers started so far: one, and one more for each that stopped.</summary>
    public int Started { get; private set; }

    /// <summary>Process id of the running worker; null when there is none.</summary>
    public int? WorkerId => _worker?.Id;

    /// <inheritdoc/>
    /// <remarks>Starts the worker and waits until it has loaded the model. When it cannot be started or cannot
    /// transcribe, another is started after a while, again and again, until one can.</remarks>
    public async Task WarmUpAsync(CancellationToken cancellationToken)
    {
        await _turn.WaitAsync(cancellationToken);
        try
        {
            await WorkerAsync();
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    /// <exception cref="RecordingFailedException">Every attempt at this recording failed.</exception>
    public async Task<Transcript> TranscribeAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(audio);
        await _turn.WaitAsync(cancellationToken);
        try
        {
            return await TryAsync(audio, examples, progress, cancellationToken);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>Ends the worker.</summary>
    public async ValueTask DisposeAsync()
    {
        await _turn.WaitAsync();
        try
        {
            _disposed = true;
            if (_nextStart is not null)
                await _nextStart.DisposeAsync();
            await StopAsync();
        }
        finally
        {
            // Those still waiting for their turn are told that it is closed.
            _turn.Release();
        }
    }

    private async Task<Transcript> TryAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        for (var attempt = 1; ; attempt++)
        {
            var worker = await WorkerAsync();
            try
            {
                return await ToTranscriptAsync(await worker.AskAsync(audio, examples, progress, cancellationToken), cancellationToken);
            }
            catch (WorkerStoppedException) when (cancellationToken.IsCancellationRequested)
            {
                throw new OperationCanceledException(cancellationToken);
            }
            catch (WorkerStoppedException e) when (attempt >= patience.Attempts)
            {
                throw new RecordingFailedException(
                    $"The speech worker stopped {attempt} times on this recording ({e.Message}). It is kept and can be transcribed later.", e);
            }
            catch (WorkerStoppedException)
            {
                // Once more, with a new worker: most crashes are not the recording's doing.
            }
        }
    }

    private async Task<Transcript> ToTranscriptAsync(WorkerFrame answer, CancellationToken cancellationToken) => answer.Message switch
    {
        WorkerMessage.Transcript => answer.FromJson<Transcript>(),
        WorkerMessage.Cancelled => throw new OperationCanceledException(cancellationToken),
        WorkerMessage.Failed => throw new RecordingFailedException(answer.Text),
        _ => throw await UnavailableAsync(answer.Text),
    };

    /// <summary>The running worker, or a new one that has loaded its model.</summary>
    private async Task<SpeechWorkerProcess> WorkerAsync()
    {
        ObjectDisposedException.ThrowIf(_disposed, this);
        if (_worker is { IsUsable: true } running)
            return running;

        await StopAsync();
        if ((models.Check().Problem ?? (await StartedAsync()).Problem) is { } problem)
            throw await UnavailableAsync(problem);

        if (_problem is not null)
        {
            _problem = null;
            BecameReady?.Invoke(this, EventArgs.Empty);
        }

        return _worker!;
    }

    private async Task<SpeechReadiness> StartedAsync()
    {
        try
        {
            _worker = SpeechWorkerProcess.Start(command, patience, time);
            Started++;
            return (await _worker.GreetAsync()).FromJson<SpeechReadiness>();
        }
        catch (Exception e) when (e is Win32Exception or WorkerStoppedException or InvalidDataException)
        {
            throw await UnavailableAsync(
                $"The speech worker cannot be started ({e.Message}). Recordings are kept and can be transcribed later.");
        }
    }

    /// <summary>Remembers what is wrong and has another worker started later: the cause may be put right meanwhile.</summary>
    private async Task<SpeechUnavailableException> UnavailableAsync(string problem)
    {
        await StopAsync();
        _problem = problem;
        _nextStart ??= time.CreateTimer(_ => _ = StartAgainAsync(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _nextStart.Change(patience.BetweenStarts, Timeout.InfiniteTimeSpan);
        return new SpeechUnavailableException(problem);
    }

    private async Task StartAgainAsync()
    {
        try
        {
            await WarmUpAsync(CancellationToken.None);
        }
        catch (Exception e) when (e is SpeechUnavailableException or ObjectDisposedException)
        {
            // Another start is planned, or the program is ending.
        }
    }

    private async Task StopAsync()
    {
        if (_worker is { } worker)
            await worker.DisposeAsync();
        _worker = null;
    }
}
