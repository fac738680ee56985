using System.Collections.Concurrent;
using System.ComponentModel;
using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Worker;

/// <summary>Develops photos in processes of their own, several at once. A photo that costs too much, or ends its worker,
/// costs that worker alone: another is started when it is needed. Safe for use by many threads.</summary>
/// <param name="command">How to start a worker.</param>
/// <param name="bounds">What a picture may cost.</param>
/// <param name="count">How many workers there may be at a time.</param>
/// <param name="time">The clock.</param>
public sealed class PhotoWorkers(PhotoWorkerCommand command, PhotoBounds bounds, int count, TimeProvider time)
    : IPhotoDeveloper, IDisposable
{
    private const int Most = 4;
    private const int Attempts = 2;

    private readonly SemaphoreSlim _turns = new(count, count);
    private readonly SemaphoreSlim _large = new(1, 1);
    private readonly ConcurrentStack<PhotoWorkerProcess> _idle = new();
    private readonly CancellationTokenSource _ending = new();
    private ITimer? _tidying;
    private int _started;

    /// <summary>A worker for each core, four at most: more would only need more memory.</summary>
    public static int UsualCount => Math.Min(Environment.ProcessorCount, Most);

    /// <summary>Workers started so far.</summary>
    public int Started => _started;

    /// <summary>Process ids of the workers that have nothing to do.</summary>
    public IReadOnlyList<int> IdleIds => [.. _idle.Select(worker => worker.Id)];

    /// <inheritdoc/>
    public async Task<PhotoAnswer> DevelopAsync(
        PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken)
    {
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken, _ending.Token);
        var isLarge = (long)facts.Width * facts.Height > PhotoBounds.LargePixels;
        if (isLarge && !await _large.WaitAsync(bounds.Turn, over.Token))
            return new PhotoAnswer.NotNow();
        try
        {
            if (!await _turns.WaitAsync(bounds.Turn, over.Token))
                return new PhotoAnswer.NotNow();
            try
            {
                return await TryAsync(work, original, bounds.Of(facts), isLarge, over.Token);
            }
            finally
            {
                _turns.Release();
            }
        }
        finally
        {
            if (isLarge)
                _large.Release();
        }
    }

    /// <summary>Ends the workers; what they are at is given up.</summary>
    public void Dispose()
    {
        _ending.Cancel();
        _tidying?.Dispose();
        EndIdle(_ => true);
    }

    private async Task<PhotoAnswer> TryAsync(
        PhotoWork work, ReadOnlyMemory<byte> original, PictureBound bound, bool isLarge, CancellationToken cancellationToken)
    {
        for (var attempt = 1; ; attempt++)
        {
            if (await WorkerAsync() is not { } worker)
                return new PhotoAnswer.NotNow();
            try
            {
                var answer = await worker.AskAsync(work, original, bound, cancellationToken);
                GiveBack(worker, isLarge);
                return answer;
            }
            catch (WorkerStoppedException stopped)
            {
                worker.Dispose();
                if (stopped.Broken is { } fault)
                    return new PhotoAnswer.NotShown(fault);
                if (attempt == Attempts)
                    return new PhotoAnswer.NotShown(PhotoFault.EndsDecoder);
            }
            catch (OperationCanceledException)
            {
                worker.Dispose();
                throw;
            }
        }
    }

    /// <summary>A worker that waits for work, or a new one; null where none can be started.</summary>
    private async Task<PhotoWorkerProcess?> WorkerAsync()
    {
        while (_idle.TryPop(out var idle))
        {
            if (idle.IsUsable)
                return idle;
            idle.Dispose();
        }

        try
        {
            var worker = await PhotoWorkerProcess.StartAsync(command, bounds, time);
            Interlocked.Increment(ref _started);
            return worker;
        }
        catch (Exception problem) when (problem is Win32Exception or WorkerStoppedException)
        {
            return null;
        }
    }

    /// <summary>Keeps a worker for the next photo. One that held a large picture keeps memory that most photos do not
    /// need.</summary>
    private void GiveBack(PhotoWorkerProcess worker, bool heldMuch)
    {
        if (heldMuch)
        {
            worker.Dispose();
            return;
        }

        _idle.Push(worker);
        LazyInitializer.EnsureInitialized(
            ref _tidying, () => time.CreateTimer(_ => EndIdle(IsLongIdle), null, bounds.Idle, bounds.Idle));
        if (_ending.IsCancellationRequested)
            EndIdle(_ => true);
    }

    private bool IsLongIdle(PhotoWorkerProcess worker) => time.GetElapsedTime(worker.LastUsed) >= bounds.Idle;

    private void EndIdle(Predicate<PhotoWorkerProcess> which)
    {
        var kept = new List<PhotoWorkerProcess>();
        while (_idle.TryPop(out var worker))
        {
            if (which(worker))
                worker.Dispose();
            else
                kept.Add(worker);
        }

        kept.ForEach(_idle.Push);
    }
}
