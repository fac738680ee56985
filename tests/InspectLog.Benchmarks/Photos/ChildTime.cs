using System.Diagnostics;
using System.Runtime.InteropServices;

namespace InspectLog.Benchmarks.Photos;

/// <summary>The processor time of a program that was run to its end, by what the system notes of ended children
/// (getrusage; Linux and macOS).</summary>
internal static partial class ChildTime
{
    private const int Children = -1;

    /// <summary>Runs a program and gives its processor time, user and system, milliseconds.</summary>
    public static double Of(string program, params string[] arguments)
    {
        var before = OfChildren();
        using (var process = Process.Start(program, arguments))
        {
            process.WaitForExit();
            if (process.ExitCode != 0)
                throw new InvalidOperationException($"{program} ended with code {process.ExitCode}.");
        }

        return OfChildren() - before;
    }

    private static double OfChildren()
    {
        _ = ResourceUsage(Children, out var usage);
        return ((usage.UserSeconds + usage.SystemSeconds) * 1000.0) + ((usage.UserMicroseconds + usage.SystemMicroseconds) / 1000.0);
    }

    [LibraryImport("libc", EntryPoint = "getrusage")]
    private static partial int ResourceUsage(int whose, out Usage usage);

    /// <summary>The start of struct rusage, and room for the rest of it.</summary>
    [StructLayout(LayoutKind.Sequential, Size = 256)]
    private struct Usage
    {
        public long UserSeconds;
        public long UserMicroseconds;
        public long SystemSeconds;
        public long SystemMicroseconds;
    }
}
