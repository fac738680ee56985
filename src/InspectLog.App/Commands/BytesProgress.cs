using InspectLog.Archives.Making;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Commands;

/// <summary>Tells on the console how far something large is; of what takes no time, nothing.</summary>
internal sealed class BytesProgress(TextWriter output, TimeProvider time) : IProgress<ArchiveProgress>, IProgress<BackupProgress>
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(2);

    private long _last = time.GetTimestamp();

    public void Report(ArchiveProgress value) => Report(value.Done, value.Of);

    public void Report(BackupProgress value) => Report(value.Done, value.Of);

    private void Report(long done, long of)
    {
        if (time.GetElapsedTime(_last) >= Every)
        {
            _last = time.GetTimestamp();
            output.WriteLine(FormattableString.Invariant($"{done / 1_000_000} of {of / 1_000_000} MB"));
        }
    }
}
