using System.Diagnostics;
using System.Text.RegularExpressions;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The built program running as a process of its own, on a free port.</summary>
internal sealed partial class RunningProgram : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private static readonly string[] WhenNeeded = ["--speech-when-needed"];

    private readonly Process _process;
    private bool _isStopped;

    private RunningProgram(Process process, Uri address, Uri? phones)
    {
        _process = process;
        Address = address;
        Phones = phones;
    }

    public Uri Address { get; }

    /// <summary>Where phones reach it by HTTPS; null where it is for this computer alone.</summary>
    public Uri? Phones { get; }

    /// <summary>Serves this computer alone.</summary>
    /// <param name="dataFolder">The data folder.</param>
    /// <param name="hearsFromStart">Whether the speech model is loaded at once, as without options: most tests record
    /// nothing, and loading it takes longer than they do.</param>
    public static Task<RunningProgram> ServeAsync(string dataFolder, bool hearsFromStart = false) =>
        StartAsync(["serve", "--data", dataFolder, "--port", "0", .. hearsFromStart ? [] : WhenNeeded], temporaryFiles: null);

    /// <summary>Serves paired phones as well, on 127.0.0.2: a browser takes 127.0.0.1 for safe by itself, which would prove
    /// nothing.</summary>
    /// <param name="dataFolder">The data folder.</param>
    /// <param name="port">Port for phones; 0 takes a free one.</param>
    public static Task<RunningProgram> ServePhonesAsync(string dataFolder, int port = 0) => StartAsync(
        ["serve", "--data", dataFolder, "--port", "0", "--lan-address", "127.0.0.2", "--lan-port", $"{port}", "--certificate-port", "0", .. WhenNeeded],
        temporaryFiles: null,
        awaitsPhones: true);

    /// <summary>Runs the demo for paired phones as well.</summary>
    /// <param name="temporaryFiles">Where it makes its garage.</param>
    public static Task<RunningProgram> DemoForPhonesAsync(string temporaryFiles) => StartAsync(
        ["demo", "--port", "0", "--lan-address", "127.0.0.2", "--lan-port", "0", "--certificate-port", "0", .. WhenNeeded],
        temporaryFiles,
        awaitsPhones: true);

    /// <summary>Runs the demo.</summary>
    /// <param name="temporaryFiles">Where it makes its garage: it is killed, so it cannot tidy up after itself.</param>
    public static Task<RunningProgram> DemoAsync(string temporaryFiles) => StartAsync(["demo", "--port", "0", .. WhenNeeded], temporaryFiles);

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
        if (_isStopped)
        {
            return;
        }

        _isStopped = true;
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private static async Task<RunningProgram> StartAsync(string[] arguments, string? temporaryFiles, bool awaitsPhones = false)
    {
        var process = Start(arguments, temporaryFiles);
        Uri? address = null;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(Patience);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            address ??= Printed().Match(line) is { Success: true } own ? new Uri(own.Value) : null;
            if (address is not null && (!awaitsPhones || PrintedForPhones().IsMatch(line)))
            {
                return new(process, address, awaitsPhones ? new Uri(PrintedForPhones().Match(line).Value) : null);
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

    [GeneratedRegex(@"https://127\.0\.0\.2:\d+/")]
    private static partial Regex PrintedForPhones();
}
