using System.ComponentModel;
using System.Diagnostics;
using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Worker;

/// <summary>One running worker and the talk with it.</summary>
internal sealed class PhotoWorkerProcess : IDisposable
{
    /// <summary>More than the bytes of a photo and what is made of them. Pixels are held outside of it and watched from
    /// here.</summary>
    private const string ManagedMemory = "14000000"; // hexadecimal: 320 MB

    private readonly Process _process;
    private readonly TimeProvider _time;
    private bool _inTheMiddle;

    private PhotoWorkerProcess(Process process, TimeProvider time) => (_process, _time) = (process, time);

    /// <summary>Whether it can be asked: alive, and not in the middle of something.</summary>
    public bool IsUsable => !_inTheMiddle && !_process.HasExited;

    public int Id => _process.Id;

    /// <summary>When it had its last work.</summary>
    public long LastUsed { get; private set; }

    /// <summary>Starts a worker and waits until it is ready.</summary>
    /// <exception cref="Win32Exception">It cannot be started.</exception>
    /// <exception cref="WorkerStoppedException">It is no worker, or takes too long.</exception>
    public static async Task<PhotoWorkerProcess> StartAsync(PhotoWorkerCommand command, PhotoBounds bounds, TimeProvider time)
    {
        var start = new ProcessStartInfo(command.FileName, command.Arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            UseShellExecute = false,
            Environment =
            {
                ["DOTNET_GCHeapHardLimit"] = ManagedMemory,
                ["DOTNET_TieredPGO"] = "0", // watching which code is hot makes the first photos slow
            },
        };
        var process = Process.Start(start)!;
        GoBehind(process);
        var worker = new PhotoWorkerProcess(process, time);
        try
        {
            var bound = new PictureBound(bounds.Starting, bounds.Starting, long.MaxValue);
            await worker.TalkAsync(bound, null, ReadyAsync, CancellationToken.None);
            return worker;
        }
        catch (WorkerStoppedException)
        {
            worker.Dispose();
            throw;
        }
    }

    /// <summary>Develops one photo.</summary>
    /// <exception cref="WorkerStoppedException">It ended, was stopped because the photo cost too much, or talked nonsense.
    /// </exception>
    /// <exception cref="OperationCanceledException">It was stopped because the photo was given up.</exception>
    public Task<PhotoAnswer> AskAsync(
        PhotoWork work, ReadOnlyMemory<byte> original, PictureBound bound, CancellationToken cancellationToken) =>
        TalkAsync(bound, PhotoFrame.Question(work, original), PhotoFrame.ReadAnswerAsync, cancellationToken);

    /// <summary>Ends the worker, whatever it does: it holds nothing that could be lost.</summary>
    public void Dispose()
    {
        Kill();
        _process.Dispose();
    }

    /// <summary>People wait for pages, and for their photos a little longer: where there is much to do, pages go first.
    /// </summary>
    private static void GoBehind(Process worker)
    {
        try
        {
            worker.PriorityClass = ProcessPriorityClass.BelowNormal; // before it has threads, which take it over
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException or NotSupportedException)
        {
            // It does its work as it is, or has ended already, which whoever talks to it will see.
        }
    }

    private static async Task<PhotoAnswer> ReadyAsync(Stream stream) => await PhotoFrame.ReadAsync(stream) switch
    {
        { Message: PhotoMessage.Ready } => new PhotoAnswer.NotNow(),
        null => throw new EndOfStreamException("it ended"),
        _ => throw PhotoFrame.Foreign(),
    };

    private async Task<PhotoAnswer> TalkAsync(
        PictureBound bound, PhotoFrame? question, Func<Stream, Task<PhotoAnswer>> read, CancellationToken cancellationToken)
    {
        _inTheMiddle = true;
        using var watch = new WorkerWatch(_process, bound, _time, Kill);
        await using var givenUp = cancellationToken.Register(Kill);
        try
        {
            if (question is { } asked)
                await asked.WriteAsync(_process.StandardInput.BaseStream);
            var answer = await read(_process.StandardOutput.BaseStream);
            LastUsed = _time.GetTimestamp();
            _inTheMiddle = false;
            return answer;
        }
        catch (Exception problem) when (problem is IOException or InvalidDataException)
        {
            Kill();
            cancellationToken.ThrowIfCancellationRequested();
            throw new WorkerStoppedException(watch.Broken, problem);
        }
    }

    private void Kill()
    {
        try
        {
            _process.Kill(entireProcessTree: true);
        }
        catch (Exception problem) when (problem is InvalidOperationException or Win32Exception)
        {
            // It has ended by itself.
        }
    }
}

/// <summary>A worker ended in the middle of something.</summary>
/// <param name="broken">The bound it was stopped for; null where it ended by itself.</param>
/// <param name="inner">How that was noticed.</param>
internal sealed class WorkerStoppedException(PhotoFault? broken, Exception inner) : Exception(inner.Message, inner)
{
    public PhotoFault? Broken => broken;
}
