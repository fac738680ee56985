using System.Diagnostics;
using System.Text.RegularExpressions;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The built program running as a process of its own, on a free port.</summary>
internal sealed partial class RunningProgram : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Process _process;

    private RunningProgram(Process process, Uri address)
    {
        _process = process;
        Address = address;
    }

    public Uri Address { get; }

    public static Task<RunningProgram> ServeAsync(string dataFolder) =>
        StartAsync(["serve", "--data", dataFolder, "--port", "0"], temporaryFiles: null);

    /// <summary>Runs the demo.</summary>
    /// <param name="temporaryFiles">Where it makes its garage: it is killed, so it cannot tidy up after itself.</param>
    public static Task<RunningProgram> DemoAsync(string temporaryFiles) => StartAsync(["demo", "--port", "0"], temporaryFiles);

    /// <summary>Runs a verb that ends by itself.</summary>
    public static async Task<(int ExitCode, string Out)> RunAsync(params string[] arguments)
    {
        using var process = Start(arguments, temporaryFiles: null);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, output);
    }

    /// <summary>Stops it at once, as a power cut would: what was acknowledged must be on disk by now.</summary>
    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private static async Task<RunningProgram> StartAsync(string[] arguments, string? temporaryFiles)
    {
        var process = Start(arguments, temporaryFiles);
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(Patience);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (Printed().Match(line) is { Success: true } address)
            {
                return new(process, new Uri(address.Value));
            }
        }

        throw new InvalidOperationException("The program ended before it printed its address.");
    }

    private static Process Start(string[] arguments, string? temporaryFiles)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
        };
        if (temporaryFiles is not null)
        {
            start.Environment["TMPDIR"] = temporaryFiles;
        }

        return Process.Start(start)!;
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Printed();
}
