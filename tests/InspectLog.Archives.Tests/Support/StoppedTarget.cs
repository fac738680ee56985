using InspectLog.Archives.Making;

namespace InspectLog.Archives.Tests.Support;

/// <summary>A bag that is given up after so many files.</summary>
internal sealed class StoppedTarget(IBagTarget target, int files, CancellationTokenSource stop) : IBagTarget
{
    private int _left = files;

    public async Task AddAsync(string path, long? length, Func<Stream, Task> write)
    {
        if (_left-- == 0)
        {
            await stop.CancelAsync();
        }

        await target.AddAsync(path, length, write);
    }

    public string Complete() => target.Complete();

    public void Dispose() => target.Dispose();
}

/// <summary>Nothing to read.</summary>
internal sealed class NothingReadable : IReadableParts
{
    public IEnumerable<ReadablePart> Of(ReadableRecord record) => [];
}

/// <summary>Photos that cannot be shown.</summary>
internal sealed class NoCopies : ICleanCopies
{
    public Task<byte[]?> OfAsync(Stream original, CancellationToken stop) => Task.FromResult<byte[]?>(null);
}
