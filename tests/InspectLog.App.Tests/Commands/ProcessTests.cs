using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace InspectLog.App.Tests.Commands;

/// <summary>The program as a process of its own: what no test inside this process can see.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    private static readonly string[] Decide =
        ["decide", "--lower", "0.6", "--upper", "2", "--unit", "Ω", "--value", "0.7", "--accuracy", "0.8%+3", "--resolution", "0.1"];

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("C")]
    [InlineData("de_DE.ISO-8859-1")]
    public async Task Output_is_utf_8_with_points_whatever_the_language(string language)
    {
        var (exitCode, output) = await RunAsync(language, Decide);

        Assert.Equal(0, exitCode);
        Assert.StartsWith("0.70\u00a0Ω ± 0.30\u00a0Ω", Encoding.UTF8.GetString(output), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Exit_code_reaches_the_shell() =>
        Assert.Equal(2, (await RunAsync("C", ["decide", "--value", "1,5"])).ExitCode);

    [Fact]
    public async Task Port_that_is_taken_is_told_in_one_line()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port;

        using var process = Start(["serve", "--data", _folder.FullName, "--port", $"{port}"], "LC_ALL", "C");
        var complaints = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var printed = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal((3, ""), (process.ExitCode, printed));
        Assert.Matches($"^Port {port} is taken[^\n]*\n$", complaints);
    }

    [Theory]
    [InlineData("TERM")]
    [InlineData("HUP")]
    public async Task App_that_is_told_to_stop_or_loses_its_window_closes_its_lists_first(string signal)
    {
        Assert.Equal((0, ""), await StopOnceOpenAsync(signal, "serve", "--data", _folder.FullName, "--port", "0"));

        Assert.True(File.Exists(Path.Combine(_folder.FullName, "index.db")));
        Assert.False(File.Exists(Path.Combine(_folder.FullName, "index-log.db")), "The lists were left open: the next start makes them again.");
    }

    [Fact]
    public async Task Demo_that_is_told_to_stop_leaves_nothing_behind()
    {
        var (exitCode, told) = await StopOnceOpenAsync("TERM", "demo", "--port", "0");

        // On a slow machine more follows: how far it is.
        Assert.Equal(0, exitCode);
        Assert.StartsWith("Making the invented garage, which takes a few seconds.\n", told, StringComparison.Ordinal);
        Assert.Empty(_folder.EnumerateFileSystemInfos("inspectlog-*"));
    }

    /// <summary>Runs the app, sends it a signal once it is open, and gives its exit code and what it told on standard
    /// error.</summary>
    private async Task<(int ExitCode, string Told)> StopOnceOpenAsync(string signal, params string[] arguments)
    {
        using var process = Start(arguments, "TMPDIR", _folder.FullName);
        var told = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        Assert.NotNull(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
        using var kill = Process.Start("kill", ["-" + signal, $"{process.Id}"]);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await told);
    }

    private static async Task<(int ExitCode, byte[] Output)> RunAsync(string language, string[] arguments)
    {
        using var process = Start(arguments, "LC_ALL", language);
        using var output = new MemoryStream();
        await process.StandardOutput.BaseStream.CopyToAsync(output, TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, output.ToArray());
    }

    private static Process Start(string[] arguments, string variable, string value) =>
        Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { [variable] = value },
        })!;
}
