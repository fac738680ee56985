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

    public static Task<RunningProgram> ServeAsync(string dataFolder) => StartAsync("serve", "--data", dataFolder, "--port", "0");

    public static Task<RunningProgram> DemoAsync() => StartAsync("demo", "--port", "0");

    /// <summary>Runs a verb that ends by itself.</summary>
    public static async Task<(int ExitCode, string Out)> RunAsync(params string[] arguments)
    {
        using var process = Start(arguments);
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

    private static async Task<RunningProgram> StartAsync(params string[] arguments)
    {
        var process = Start(arguments);
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

    private static Process Start(string[] arguments) => Process.Start(
        new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
        })!;

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Printed();
}
