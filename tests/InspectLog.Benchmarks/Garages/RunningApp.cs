using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Benchmarks.Garages;

/// <summary>An app in a process of its own, with how long it took to start.</summary>
internal sealed partial class RunningApp : IAsyncDisposable
{
    private readonly Process _process;

    private RunningApp(Process process, Uri address, TimeSpan open)
    {
        _process = process;
        Client = new HttpClient { BaseAddress = address };
        Open = open;
    }

    /// <summary>What it is asked through.</summary>
    public HttpClient Client { get; }

    /// <summary>From the start of the process to the line with its address.</summary>
    public TimeSpan Open { get; }

    /// <summary>From the start of the process to its first page.</summary>
    public TimeSpan FirstPage { get; private set; }

    /// <summary>Processor time it took until its first page: what a busy computer does not blur.</summary>
    public TimeSpan Processor { get; private set; }

    /// <summary>What it holds in memory, MB.</summary>
    public double ResidentMegabytes => double.Parse(
        Resident().Match(File.ReadAllText($"/proc/{_process.Id}/status")).Groups[1].Value, CultureInfo.InvariantCulture) / 1024;

    /// <summary>The program on a data folder.</summary>
    /// <param name="program">The program as it was made to be installed; null for the one that was built with this.</param>
    /// <param name="folder">The folder.</param>
    public static Task<RunningApp> ServeAsync(string? program, string folder)
    {
        string[] serve = ["serve", "--data", folder, "--port", "0", "--speech-when-needed"];
        return program is null || program.EndsWith(".dll", StringComparison.Ordinal)
            ? StartAsync("dotnet", [program ?? Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. serve])
            : StartAsync(program, serve);
    }

    /// <summary>The app that does nothing.</summary>
    public static Task<RunningApp> EmptyAsync() => StartAsync("dotnet", Path.Combine(AppContext.BaseDirectory, "InspectLog.Benchmarks.dll"), "empty-app");

    /// <summary>Ends it in good order, so that its index is closed.</summary>
    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        using (var kill = Process.Start("kill", ["-TERM", _process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await kill.WaitForExitAsync();
        }

        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private static async Task<RunningApp> StartAsync(string program, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
        })!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Address().Match(line) is { Success: true } address)
            {
                var app = new RunningApp(process, new Uri(address.Value), watch.Elapsed);
                await app.Client.GetStringAsync("/");
                app.FirstPage = watch.Elapsed;
                app.Processor = process.TotalProcessorTime;
                _ = process.StandardOutput.ReadToEndAsync(); // a full pipe would stop it
                return app;
            }
        }

        throw new InvalidOperationException($"{program} ended before it printed its address.");
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Address();

    [GeneratedRegex(@"VmRSS:\s+(\d+)")]
    private static partial Regex Resident();
}
