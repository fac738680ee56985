using System.Diagnostics;

namespace InspectLog.Journal.Tests.Support;

/// <summary>This test program, started again as another process.</summary>
internal static class OtherProcess
{
    private static readonly string Own = Path.Combine(
        AppContext.BaseDirectory, "InspectLog.Journal.Tests" + (OperatingSystem.IsWindows() ? ".exe" : ""));

    /// <summary>Starts it with a verb of <see cref="Program"/>, on its own or under another program.</summary>
    public static Process Start(string verb, string folder, params IReadOnlyList<string> under)
    {
        string[] command = [.. under, Own, verb, folder];
        return Process.Start(new ProcessStartInfo(command[0], command[1..])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
    }

    /// <summary>Runs it to its end and gives its output.</summary>
    public static async Task<string> Run(string verb, string folder, params IReadOnlyList<string> under)
    {
        using var process = Start(verb, folder, under);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, $"exit code {process.ExitCode}: {await error}{output}");
        return output;
    }
}
