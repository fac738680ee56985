using System.Diagnostics;
using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Worker;

/// <summary>Watches what a worker costs while it has a picture, and stops it when that is too much. It looks from outside,
/// the same way on every system, because a decoder that never returns can't be asked.</summary>
internal sealed class WorkerWatch : IDisposable
{
    /// <summary>A decoder fills some hundred megabytes between two looks at most.</summary>
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(50);

    private readonly Process _worker;
    private readonly PictureBound _bound;
    private readonly TimeProvider _time;
    private readonly Action _stop;
    private readonly long _start;
    private readonly TimeSpan _before;
    private readonly ITimer _looks;
    private volatile int _broken;

    public WorkerWatch(Process worker, PictureBound bound, TimeProvider time, Action stop)
    {
        (_worker, _bound, _time, _stop) = (worker, bound, time, stop);
        _start = time.GetTimestamp();
        _before = Processor() ?? TimeSpan.Zero;
        _looks = time.CreateTimer(_ => Look(), null, BetweenLooks, BetweenLooks);
    }

    /// <summary>The bound that was broken; null where none was.</summary>
    public PhotoFault? Broken => _broken == 0 ? null : (PhotoFault)_broken;

    public void Dispose() => _looks.Dispose();

    private void Look()
    {
        if (_broken == 0 && Fault() is { } fault)
        {
            _broken = (int)fault;
            _stop();
        }
    }

    private PhotoFault? Fault()
    {
        var isSlow = Processor() - _before > _bound.Processor || _time.GetElapsedTime(_start) > _bound.Clock;
        return isSlow ? PhotoFault.TooSlow : Memory() > _bound.Memory ? PhotoFault.TooMuchMemory : null;
    }

    private TimeSpan? Processor() => Ask(worker => worker.TotalProcessorTime);

    private long? Memory() => Ask(worker => worker.WorkingSet64);

    /// <summary>What the system says of the worker; null where it has ended, which whoever talks to it will see.</summary>
    private T? Ask<T>(Func<Process, T> what)
        where T : struct
    {
        try
        {
            _worker.Refresh();
            return what(_worker);
        }
        catch (Exception problem) when (problem is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
