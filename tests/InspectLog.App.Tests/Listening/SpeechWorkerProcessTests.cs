using System.Diagnostics;
using System.Globalization;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Listening;

/// <summary>The program and its speech worker as real processes, with the real model.</summary>
[Trait("Takes", "long")]
public sealed class SpeechWorkerProcessTests(ITestOutputHelper output) : IDisposable
{
    /// <summary>How often the worker is killed; more by hand: <c>INSPECTLOG_KILLS=50</c>.</summary>
    private static readonly int Kills =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_KILLS"), CultureInfo.InvariantCulture, out var kills) ? kills : 5;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-worker-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static byte[] Note => File.ReadAllBytes(Beside("demo/recordings/marigold-05.wav"));

    public static TheoryData<string, string[]> WaysToStart() => new()
    {
        { "dotnet", [Beside("inspectlog.dll")] },
        { Beside("inspectlog"), [] },
    };

    [Theory]
    [MemberData(nameof(WaysToStart))]
    public async Task Program_transcribes_in_a_worker_that_ends_with_it(string fileName, string[] arguments)
    {
        int worker;
        await using (var program = await ServedProgram.StartAsync(_folder.FullName, fileName, arguments))
        {
            var bench = await program.StartInspectionAsync();
            Assert.NotEmpty(await program.HeardAsync(bench, await program.SayAsync(bench, Note)));
            worker = await program.WaitForWorkerAsync();

            program.Kill(); // as a power cut would: nothing tells the worker
            await WaitUntilGoneAsync(worker);
        }
    }

    [Fact]
    public async Task Model_is_loaded_with_the_first_recording_where_that_is_asked_for()
    {
        await using var program = await ServedProgram.StartAsync(
            _folder.FullName, "dotnet", [Beside("inspectlog.dll")], "--speech-when-needed");
        var bench = await program.StartInspectionAsync();
        Assert.Null(program.WorkerId());

        Assert.NotEmpty(await program.HeardAsync(bench, await program.SayAsync(bench, Note)));
        Assert.NotNull(program.WorkerId());
    }

    [Fact]
    public async Task Note_is_transcribed_and_the_server_stays_however_often_the_worker_is_killed()
    {
        await using var program = await ServedProgram.StartAsync(_folder.FullName, "dotnet", [Beside("inspectlog.dll")]);
        var bench = await program.StartInspectionAsync();
        var undisturbed = await program.HeardAsync(bench, await program.SayAsync(bench, Note));
        using var events = await program.Client.GetStreamAsync($"{bench}/events", Stop);
        using var lines = new StreamReader(events);
        var moments = new Random(5);
        var start = Stopwatch.GetTimestamp();

        for (var i = 0; i < Kills; i++)
        {
            var recording = await program.SayAsync(bench, Note);
            await ProgressOfAsync(lines, recording);
            await Task.Delay(moments.Next(200), Stop); // anywhere in the decoding
            var worker = await program.WaitForWorkerAsync();
            using (var process = Process.GetProcessById(worker))
            {
                process.Kill(); // SIGKILL
            }

            Assert.Equal(undisturbed, await program.HeardAsync(bench, recording));
            Assert.NotEqual(worker, await program.WaitForWorkerAsync());
            Assert.True(program.IsRunning);
        }

        output.WriteLine($"{Kills} kills, {Stopwatch.GetElapsedTime(start).TotalSeconds / Kills:0.00} s a note");
    }

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>Waits until a note is being decoded: the worker has reported more than its first step.</summary>
    private static async Task ProgressOfAsync(StreamReader lines, long recording)
    {
        while (await lines.ReadLineAsync(Stop) is { } line)
        {
            if (line.Contains($"\"recording\":{recording}", StringComparison.Ordinal)
                && !line.Contains("\"share\":0}", StringComparison.Ordinal))
            {
                return;
            }
        }

        Assert.Fail("The events ended.");
    }

    private static async Task WaitUntilGoneAsync(int worker)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Eventually.Patience);
        while (ServedProgram.IsThere(worker))
        {
            await Task.Delay(50, patience.Token);
        }
    }

    private static string Beside(string file) => Path.Combine(AppContext.BaseDirectory, file);
}
