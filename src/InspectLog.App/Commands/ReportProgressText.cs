using InspectLog.App.Reports.Files;

namespace InspectLog.App.Commands;

/// <summary>Tells on the console how far a long report is; of what takes less than a second, nothing.</summary>
internal sealed class ReportProgressText(TextWriter output, TimeProvider time) : IProgress<ReportProgress>
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(1);

    private long _last = time.GetTimestamp();

    public void Report(ReportProgress value)
    {
        if (time.GetElapsedTime(_last) >= Every)
        {
            _last = time.GetTimestamp();
            output.WriteLine(FormattableString.Invariant($"{value.What} {value.At} of {value.Of}"));
        }
    }
}
