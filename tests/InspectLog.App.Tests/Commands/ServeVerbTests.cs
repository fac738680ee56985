using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using InspectLog.App.Commands;
using InspectLog.App.Tests.Web;
using InspectLog.Journal;

namespace InspectLog.App.Tests.Commands;

public sealed partial class ServeVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Address_is_printed_once_the_app_answers()
    {
        using var stop = new CancellationTokenSource();
        using var output = new LineSignal();
        var speech = new ScriptedSpeech { Problem = "The speech model is missing." };
        using var error = new StringWriter();
        var surroundings = new Surroundings(TextReader.Null, output, error, TimeProvider.System, _ => speech, _ => speech);

        var serving = CommandLine.RunAsync(["serve", "--data", _folder.FullName, "--port", "0"], surroundings, stop.Token);
        var line = await output.FirstLine.WaitAsync(Eventually.Patience, TestContext.Current.CancellationToken);
        using var client = new HttpClient();
        var answer = await client.GetAsync(Address().Match(line).Value, TestContext.Current.CancellationToken);
        await stop.CancelAsync();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("The speech model is missing.", error.ToString().Trim());
        Assert.Equal(0, await serving);
    }

    [Theory]
    [InlineData(true, "")]
    [InlineData(false, "No browser was found to show it. Open the address above by hand.")]
    public async Task Pages_are_shown_in_the_browser_where_that_is_asked_for(bool hasBrowser, string told)
    {
        using var stop = new CancellationTokenSource();
        using var error = new StringWriter();
        var speech = new ScriptedSpeech();
        var shown = new TaskCompletionSource<Uri>();
        var surroundings = new Surroundings(TextReader.Null, TextWriter.Null, error, TimeProvider.System, _ => speech, _ => speech)
        {
            Browse = address => shown.TrySetResult(address) && hasBrowser,
        };

        var serving = CommandLine.RunAsync(["serve", "--data", _folder.FullName, "--port", "0", "--open"], surroundings, stop.Token);
        using var client = new HttpClient();
        var answer = await client.GetAsync(
            await shown.Task.WaitAsync(Eventually.Patience, TestContext.Current.CancellationToken), TestContext.Current.CancellationToken);
        await stop.CancelAsync();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(0, await serving);
        Assert.Equal(told, error.ToString().Trim());
    }

    [Fact]
    public async Task Taken_port_is_told_with_what_to_do()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port;

        var run = await CommandRun.OfAsync("serve", "--data", _folder.FullName, "--port", $"{port}");

        Assert.Equal((3, ""), (run.ExitCode, run.Out));
        Assert.Contains($"Port {port} is taken", run.Error, StringComparison.Ordinal);
        Assert.Contains("--port", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Folder_in_use_is_told_with_what_to_do()
    {
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);

        var run = await CommandRun.OfAsync("serve", "--data", _folder.FullName, "--port", "0");

        Assert.Equal((3, ""), (run.ExitCode, run.Out));
        Assert.Contains(_folder.FullName, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("65536")]
    [InlineData("http")]
    public async Task Impossible_port_is_refused(string port)
    {
        var run = await CommandRun.OfAsync("serve", "--data", _folder.FullName, "--port", port);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("port", run.Error, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Address();

    /// <summary>Completes with the first line written.</summary>
    private sealed class LineSignal : StringWriter
    {
        private readonly TaskCompletionSource<string> _line = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task<string> FirstLine => _line.Task;

        public override void WriteLine(string? value) => _line.TrySetResult(value ?? "");
    }
}
