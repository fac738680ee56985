using System.Diagnostics;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>Tools of others, run as people run them.</summary>
internal static class OtherTools
{
    /// <summary>Runs a tool in a folder and gives its exit code and all it said.</summary>
    public static (int ExitCode, string Said) Run(string folder, string tool, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(tool, arguments)
        {
            WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        var error = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd() + error.GetAwaiter().GetResult();
        process.WaitForExit();
        return (process.ExitCode, said);
    }

    /// <summary>Runs a tool that has to do what it is asked.</summary>
    public static string Do(string folder, string tool, params string[] arguments)
    {
        var (code, said) = Run(folder, tool, arguments);
        Assert.True(code == 0, $"{tool} {string.Join(' ', arguments)} ended with {code}: {said}");
        return said;
    }
}
