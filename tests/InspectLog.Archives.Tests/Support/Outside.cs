using System.Diagnostics;

namespace InspectLog.Archives.Tests.Support;

/// <summary>Programs of the system, which know nothing of ours.</summary>
internal static class Outside
{
    public static async Task<(int ExitCode, string Out)> RunAsync(string program, string folder, params IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output);
    }
}
