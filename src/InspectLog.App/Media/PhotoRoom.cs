using InspectLog.Photos.Worker;

namespace InspectLog.App.Media;

/// <summary>Room for originals in memory: so many at a time, however many are sent or asked for at once. Each has it for a
/// bounded time, since what is done with it takes bounded time.</summary>
public sealed class PhotoRoom : IDisposable
{
    private readonly SemaphoreSlim _places = new(2 * PhotoWorkers.UsualCount);

    /// <summary>Waits for room, which is given back by disposing of it.</summary>
    /// <exception cref="OperationCanceledException">Given up while waiting.</exception>
    public async Task<IDisposable> EnterAsync(CancellationToken cancellationToken)
    {
        await _places.WaitAsync(cancellationToken);
        return new Place(_places);
    }

    public void Dispose() => _places.Dispose();

    private sealed class Place(SemaphoreSlim places) : IDisposable
    {
        private int _left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref _left, 1) == 0)
            {
                places.Release();
            }
        }
    }
}
