using System.Diagnostics;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.Dictation.Tests.Hearing.Worker;

/// <summary>The client against workers that misbehave in every way a process can.</summary>
[Collection(SpeechFixture.OneAtATime)]
public sealed partial class SpeechWorkerClientTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-worker-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string AFile => Path.Combine(_folder.FullName, "file");

    [Fact]
    public async Task Recording_is_transcribed_with_progress_and_the_worker_is_kept()
    {
        await using var client = TestWorker.Scripted();
        var progress = new ProgressList();
        var heard = await client.TranscribeAsync(Samples(1_000), progress, Stop);
        Assert.Equal("1000", heard.Text);
        Assert.Equal(new HeardWord("1000", 0.5, 1.25, 0.75, 0), Assert.Single(heard.Words));
        Assert.Equal(Samples(1_000).Duration, heard.Duration);
        Assert.Equal([0.25, 1], progress.Values);

        Assert.Equal("0", (await client.TranscribeAsync(Samples(0), null, Stop)).Text);
        Assert.Equal(1, client.Started);
    }

    [Fact]
    public async Task Longest_recording_goes_through()
    {
        await using var client = TestWorker.Scripted();
        Assert.Equal("9600000", (await client.TranscribeAsync(Samples(9_600_000), null, Stop)).Text);
    }

    [Fact]
    public async Task Examples_go_with_their_recording_and_no_other()
    {
        await using var client = TestWorker.Scripted();
        Assert.Equal("3 Gap 0.3 mm.", (await client.TranscribeAsync(Samples(3), "Gap 0.3 mm.", null, Stop)).Text);
        Assert.Equal("4", (await client.TranscribeAsync(Samples(4), null, Stop)).Text);
    }

    [Fact]
    public async Task Examples_survive_a_worker_that_crashed()
    {
        await using var client = TestWorker.Scripted("dies-once", AFile);
        Assert.Equal("7 Ω 0.3", (await client.TranscribeAsync(Samples(7), "Ω 0.3", null, Stop)).Text);
    }

    [Fact]
    public async Task Recordings_wait_for_each_other()
    {
        await using var client = TestWorker.Scripted("slow");
        var heard = await Task.WhenAll(Enumerable.Range(1, 4).Select(n => client.TranscribeAsync(Samples(n), null, Stop)));
        Assert.Equal(["1", "2", "3", "4"], heard.Select(one => one.Text));
        Assert.Equal(1, client.Started);
    }

    [Fact]
    public async Task Worker_that_crashed_is_replaced_and_the_recording_tried_again()
    {
        await using var client = TestWorker.Scripted("dies-once", AFile);
        Assert.Equal("7", (await client.TranscribeAsync(Samples(7), null, Stop)).Text);
        Assert.Equal(2, client.Started);
    }

    [Fact]
    public async Task Recording_that_crashes_every_worker_fails_alone()
    {
        await using var client = TestWorker.Scripted("dies");
        var failed = await Assert.ThrowsAsync<RecordingFailedException>(() => client.TranscribeAsync(Samples(7), null, Stop));
        Assert.Contains("stopped 3 times", failed.Message, StringComparison.Ordinal);
        Assert.True(client.Readiness.Ready);
    }

    [Fact]
    public async Task Worker_killed_while_it_has_nothing_to_do_is_replaced()
    {
        await using var client = TestWorker.Scripted();
        await client.WarmUpAsync(Stop);
        using (var worker = Process.GetProcessById(client.WorkerId!.Value))
        {
            worker.Kill();
            await worker.WaitForExitAsync(Stop);
        }

        Assert.Equal("7", (await client.TranscribeAsync(Samples(7), null, Stop)).Text);
        Assert.Equal(2, client.Started);
    }

    [Fact]
    public void Patience_grows_with_the_recording_up_to_the_longest_clip() => Assert.Equal(
        [30, 50, 142, 142],
        new[] { 0, 5, 28, 600 }.Select(seconds => SpeechWorkerPatience.Usual.StepOf(TimeSpan.FromSeconds(seconds)).TotalSeconds));

    [Fact]
    public async Task Worker_that_decodes_without_end_does_not_outlive_its_parent()
    {
        var command = TestWorker.Command("scripted", "stuck");
        using var worker = Process.Start(new ProcessStartInfo(command.FileName, command.Arguments) { RedirectStandardInput = true, RedirectStandardOutput = true })!;
        await WorkerFrame.OfAudio(Samples(7)).WriteAsync(worker.StandardInput.BaseStream, Stop);
        Assert.Equal(WorkerMessage.Readiness, (await WorkerFrame.ReadAsync(worker.StandardOutput.BaseStream, Stop))!.Value.Message);
        Assert.Equal(WorkerMessage.Progress, (await WorkerFrame.ReadAsync(worker.StandardOutput.BaseStream, Stop))!.Value.Message);
        worker.StandardInput.Close();
        Assert.True(worker.WaitForExit(TestWorker.GiveUp) || Killed(worker));

        static bool Killed(Process worker)
        {
            worker.Kill();
            return false;
        }
    }

    [Fact]
    public async Task Worker_that_is_stuck_is_stopped_and_tried_once_more()
    {
        await using var client = TestWorker.Client(TestWorker.Command("scripted", "stuck"), TestWorker.Impatience);
        var failed = await Assert.ThrowsAsync<RecordingFailedException>(() => client.TranscribeAsync(Samples(7), null, Stop));
        Assert.Contains("no progress", failed.Message, StringComparison.Ordinal);
        Assert.Equal(TestWorker.Impatience.Attempts, client.Started);
    }

    [Fact]
    public async Task Cancel_is_obeyed_and_the_worker_kept()
    {
        await using var client = TestWorker.Scripted("slow");
        using var cancel = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var cancelAtOnce = new ProgressList(cancel.Cancel);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.TranscribeAsync(Samples(7), cancelAtOnce, cancel.Token));
        Assert.Equal("8", (await client.TranscribeAsync(Samples(8), null, Stop)).Text);
        Assert.Equal(1, client.Started);
    }

    [Fact]
    public async Task Worker_that_ignores_cancel_is_stopped()
    {
        await using var client = TestWorker.Client(TestWorker.Command("scripted", "stuck"), TestWorker.Impatience);
        using var cancel = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var cancelAtOnce = new ProgressList(cancel.Cancel);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.TranscribeAsync(Samples(7), cancelAtOnce, cancel.Token));
        Assert.Equal(1, client.Started);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static PcmAudio Samples(int count) => new(new float[count]);

    private sealed class ProgressList(Action? then = null) : IProgress<double>
    {
        public List<double> Values { get; } = [];

        public void Report(double value)
        {
            Values.Add(value);
            then?.Invoke();
        }
    }
}
