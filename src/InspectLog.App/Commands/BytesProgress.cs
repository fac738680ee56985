using InspectLog.Archives.Making;

namespace InspectLog.App.Commands;

/// <summary>Tells on the console how far something large is; of what takes no time, nothing.</summary>
internal sealed class BytesProgress(TextWriter output, TimeProvider time) : IProgress<ArchiveProgress>
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(2);

    private long _last = time.GetTimestamp();

    public void Report(ArchiveProgress value)
    {
        if (time.GetElapsedTime(_last) >= Every)
        {
            _last = time.GetTimestamp();
            output.WriteLine(FormattableString.Invariant($"{value.Done / 1_000_000} of {value.Of / 1_000_000} MB"));
        }
    }
}
