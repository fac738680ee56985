namespace InspectLog.App.Listening;

/// <summary>The one transcription that is under way, so that a request can cancel it.</summary>
public sealed class RunningTranscription
{
    private readonly Lock _gate = new();
    private (string Vehicle, long Recording, CancellationTokenSource Cancel)? _current;

    /// <summary>Does the work on a recording, which <see cref="Cancel"/> cancels.</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="recording">Sequence of the recording's entry.</param>
    /// <param name="work">The work.</param>
    /// <param name="stopping">Cancels it too.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public async Task RunAsync(
        string vehicleId, long recording, Func<CancellationToken, Task> work, CancellationToken stopping)
    {
        using var cancel = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        Put((vehicleId, recording, cancel));
        try
        {
            await work(cancel.Token);
        }
        finally
        {
            Put(null);
        }
    }

    /// <summary>Cancels the work on a recording, if that is what is under way.</summary>
    public void Cancel(string vehicleId, long recording)
    {
        lock (_gate)
        {
            if (_current is { } current && current.Vehicle == vehicleId && current.Recording == recording)
            {
                // Not at once: what follows from it must not run on the request's thread, inside the lock.
                _ = current.Cancel.CancelAsync();
            }
        }
    }

    private void Put((string Vehicle, long Recording, CancellationTokenSource Cancel)? current)
    {
        lock (_gate)
        {
            _current = current;
        }
    }
}
