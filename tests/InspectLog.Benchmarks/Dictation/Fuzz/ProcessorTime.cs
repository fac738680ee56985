using System.Diagnostics;
using System.Runtime.InteropServices;

namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>The processor time of the calling thread, so that what other programs on the machine do is not counted. The
/// runtime has no such clock; on Linux it is the system's own, elsewhere it is the time of day.</summary>
internal static partial class ProcessorTime
{
    private const int ThreadClock = 3;
    private const double Nanoseconds = 1e6;

    [StructLayout(LayoutKind.Sequential)]
    private struct TimeSpec
    {
        public nint Seconds;
        public nint Nanoseconds;
    }

    /// <summary>Whether other programs' turns are left out.</summary>
    public static bool IsOfThread { get; } = OperatingSystem.IsLinux();

    /// <summary>Milliseconds the calling thread takes for some work.</summary>
    public static double Of(Action work)
    {
        var start = Now();
        work();
        return Now() - start;
    }

    private static double Now()
    {
        if (!IsOfThread)
        {
            return Stopwatch.GetTimestamp() * 1e3 / Stopwatch.Frequency;
        }

        return GetTime(ThreadClock, out var time) == 0
            ? time.Seconds * 1e3 + time.Nanoseconds / Nanoseconds
            : throw new InvalidOperationException("The system does not tell a thread's processor time.");
    }

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetTime(int clock, out TimeSpec time);
}
