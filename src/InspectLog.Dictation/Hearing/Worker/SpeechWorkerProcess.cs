using System.ComponentModel;
using System.Diagnostics;

namespace InspectLog.Dictation.Hearing.Worker;

/// <summary>One running worker process and the talk with it.</summary>
internal sealed class SpeechWorkerProcess : IAsyncDisposable
{
    private static readonly TimeSpan TimeToEnd = TimeSpan.FromSeconds(2);

    private readonly Process _process;
    private readonly SpeechWorkerPatience _patience;
    private readonly TimeProvider _time;
    private readonly Task<string> _complaints;
    private readonly SemaphoreSlim _writing = new(1, 1);
    private bool _inTheMiddle;

    private SpeechWorkerProcess(Process process, SpeechWorkerPatience patience, TimeProvider time)
    {
        (_process, _patience, _time) = (process, patience, time);
        _complaints = ReadEndAsync(process.StandardError);
    }

    /// <summary>Whether it can be talked to: alive, and not in the middle of something.</summary>
    public bool IsUsable => !_inTheMiddle && !_process.HasExited;

    public int Id => _process.Id;

    /// <summary>Starts a worker.</summary>
    /// <exception cref="Win32Exception">It cannot be started.</exception>
    public static SpeechWorkerProcess Start(SpeechWorkerCommand command, SpeechWorkerPatience patience, TimeProvider time)
    {
        var start = new ProcessStartInfo(command.FileName, command.Arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,

            // whisper.cpp's threads spin while they wait for each other. On a machine with other work to do that
            // costs several times the work itself (measured: 260 s of processor time instead of 92 s).
            Environment = { ["OMP_WAIT_POLICY"] = "passive" },
        };
        var process = Process.Start(start)!;
        GoBehind(process);
        return new SpeechWorkerProcess(process, patience, time);
    }

    /// <summary>People wait for pages, and for transcripts a little longer: where there is much to do, pages go first.</summary>
    private static void GoBehind(Process worker)
    {
        try
        {
            worker.PriorityClass = ProcessPriorityClass.BelowNormal; // before it has threads, which take it over
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or NotSupportedException)
        {
            // It does its work as it is, or has ended already, which whoever talks to it will see.
        }
    }

    /// <summary>Waits until it has loaded its model, or failed to.</summary>
    /// <exception cref="WorkerStoppedException">The worker ended, got stuck, or talked nonsense.</exception>
    public Task<WorkerFrame> GreetAsync() => AnswerAsync([], _patience.Loading, null, CancellationToken.None);

    /// <summary>Sends a recording, and examples if there are any, and waits for the answer.</summary>
    /// <exception cref="WorkerStoppedException">The worker ended, got stuck, or talked nonsense.</exception>
    public Task<WorkerFrame> AskAsync(PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken) =>
        AnswerAsync(Questions(audio, examples), _patience.StepOf(audio.Duration), progress, cancellationToken);

    /// <summary>Ends the worker: kindly, then firmly.</summary>
    public async ValueTask DisposeAsync()
    {
        try
        {
            _process.StandardInput.Close();
            await _process.WaitForExitAsync().WaitAsync(TimeToEnd);
        }
        catch (Exception e) when (e is IOException or TimeoutException)
        {
            Kill();
            await _process.WaitForExitAsync();
        }

        await _complaints;
        _process.Dispose();
        _writing.Dispose();
    }

    private static IEnumerable<WorkerFrame> Questions(PcmAudio audio, string? examples)
    {
        if (examples is not null)
            yield return WorkerFrame.OfText(WorkerMessage.Examples, examples);
        yield return WorkerFrame.OfAudio(audio);
    }

    private async Task<WorkerFrame> AnswerAsync(
        IEnumerable<WorkerFrame> questions, TimeSpan longestSilence, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        var givingUp = Task.CompletedTask;
        using var watchdog = new CancellationTokenSource(longestSilence, _time);
        await using var stopping = watchdog.Token.Register(Kill);
        await using var cancelling = cancellationToken.Register(() => givingUp = GiveUpAsync(watchdog));
        _inTheMiddle = true;
        try
        {
            foreach (var question in questions)
                await SendAsync(question);
            while (await WorkerFrame.ReadAsync(_process.StandardOutput.BaseStream, CancellationToken.None) is { } frame)
            {
                if (frame.Message != WorkerMessage.Progress)
                {
                    _inTheMiddle = false;
                    return frame;
                }

                progress?.Report(frame.Share);
                if (!cancellationToken.IsCancellationRequested)
                    watchdog.CancelAfter(longestSilence);
            }
        }
        catch (Exception e) when (e is IOException or InvalidDataException)
        {
            throw await StoppedAsync(watchdog.IsCancellationRequested, e);
        }
        finally
        {
            // Else a late word to give up could reach the next recording.
            await cancelling.DisposeAsync();
            await givingUp;
        }

        throw await StoppedAsync(watchdog.IsCancellationRequested, null);
    }

    private async Task GiveUpAsync(CancellationTokenSource watchdog)
    {
        try
        {
            watchdog.CancelAfter(_patience.AfterCancel);
            await SendAsync(WorkerFrame.Of(WorkerMessage.Cancel));
        }
        catch (IOException)
        {
            // It has ended, which the answer will show.
        }
    }

    private async Task SendAsync(WorkerFrame frame)
    {
        await _writing.WaitAsync();
        try
        {
            await frame.WriteAsync(_process.StandardInput.BaseStream, CancellationToken.None);
        }
        finally
        {
            _writing.Release();
        }
    }

    private async Task<WorkerStoppedException> StoppedAsync(bool stuck, Exception? inner)
    {
        Kill();
        await _process.WaitForExitAsync();
        var how = stuck ? "it made no progress"
            : inner is InvalidDataException ? inner.Message
            : $"it ended with code {_process.ExitCode}";
        return new WorkerStoppedException(await _complaints is { Length: > 0 } complaints ? $"{how}: {complaints}" : how, inner);
    }

    private void Kill()
    {
        try
        {
            _process.Kill(entireProcessTree: true);
        }
        catch (Exception e) when (e is InvalidOperationException or Win32Exception)
        {
            // It has ended by itself.
        }
    }

    /// <summary>Reads what the worker and its native code complain of, and keeps the end.</summary>
    private static async Task<string> ReadEndAsync(StreamReader complaints)
    {
        const int kept = 400;
        var end = string.Empty;
        while (await complaints.ReadLineAsync() is { } line)
        {
            end = $"{end} {line}".Trim();
            end = end[Math.Max(0, end.Length - kept)..];
        }

        return end;
    }
}

/// <summary>The worker process ended in the middle of something.</summary>
internal sealed class WorkerStoppedException(string message, Exception? inner) : Exception(message, inner);
