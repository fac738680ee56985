using System.Threading.Channels;

namespace InspectLog.App.Listening;

/// <summary>Wakes the transcription worker when there is something new. It has nothing to be disposed of: on a slow computer the
/// worker may come to wait when the program has ended, and is then cancelled like any other time.</summary>
public sealed class TranscriptionSignal
{
    private readonly Channel<bool> _new = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    /// <summary>Says that there is something new; saying it twice before it is heard is saying it once.</summary>
    public void Raise() => _new.Writer.TryWrite(true);

    /// <summary>Waits until there is something new.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public async Task WaitAsync(CancellationToken cancellationToken) => await _new.Reader.ReadAsync(cancellationToken);
}
