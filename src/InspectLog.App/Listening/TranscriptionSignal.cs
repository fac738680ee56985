namespace InspectLog.App.Listening;

/// <summary>Wakes the transcription worker when there is something new.</summary>
public sealed class TranscriptionSignal : IDisposable
{
    private readonly SemaphoreSlim _new = new(0, 1);
    private readonly Lock _gate = new();

    /// <summary>Says that there is something new; saying it twice before it is heard is saying it once.</summary>
    public void Raise()
    {
        lock (_gate)
        {
            if (_new.CurrentCount == 0)
            {
                _new.Release();
            }
        }
    }

    /// <summary>Waits until there is something new.</summary>
    public Task WaitAsync(CancellationToken cancellationToken) => _new.WaitAsync(cancellationToken);

    public void Dispose() => _new.Dispose();
}
