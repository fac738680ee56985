using System.Diagnostics;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.Dictation.Tests.Hearing.Worker;

/// <content>Workers that fail, never become one, or lose their parent.</content>
public sealed partial class SpeechWorkerClientTests
{
    [Fact]
    public async Task Recording_the_worker_fails_on_is_told_with_the_reason()
    {
        await using var client = TestWorker.Scripted("fails");
        var failed = await Assert.ThrowsAsync<RecordingFailedException>(() => client.TranscribeAsync(Samples(7), null, Stop));
        Assert.Equal("out of luck", failed.Message);
    }

    [Fact]
    public async Task Model_the_worker_lost_is_told()
    {
        await using var client = TestWorker.Scripted("unavailable");
        var thrown = await Assert.ThrowsAsync<SpeechUnavailableException>(() => client.TranscribeAsync(Samples(7), null, Stop));
        Assert.Equal("The model is gone.", thrown.Message);
        Assert.Equal("The model is gone.", client.Readiness.Problem);
    }

    [Theory]
    [InlineData("ends-at-once", "ended with code 134: no memory")]
    [InlineData("garbage", "does not speak the worker's protocol")]
    public async Task Worker_that_never_becomes_one_is_told(string behaviour, string reason)
    {
        await using var client = TestWorker.Client(TestWorker.Command(behaviour), TestWorker.Impatience);
        var thrown = await Assert.ThrowsAsync<SpeechUnavailableException>(() => client.TranscribeAsync(Samples(7), null, Stop));
        Assert.Contains(reason, thrown.Message, StringComparison.Ordinal);
        Assert.False(client.Readiness.Ready);
    }

    [Fact]
    public async Task Program_that_is_not_there_is_told()
    {
        await using var client = TestWorker.Client(new SpeechWorkerCommand(AFile));
        var thrown = await Assert.ThrowsAsync<SpeechUnavailableException>(() => client.WarmUpAsync(Stop));
        Assert.Contains("cannot be started", thrown.Message, StringComparison.Ordinal);
        Assert.Equal(thrown.Message, client.Readiness.Problem);
    }

    [Fact]
    public async Task Worker_that_can_transcribe_later_is_found_out_without_asking()
    {
        await using var client = TestWorker.Scripted("not-ready", AFile);
        var ready = new TaskCompletionSource();
        client.BecameReady += (_, _) => ready.TrySetResult();
        await Assert.ThrowsAsync<SpeechUnavailableException>(() => client.WarmUpAsync(Stop));
        Assert.Equal("The library is missing.", client.Readiness.Problem);

        await File.WriteAllTextAsync(AFile, "put right", Stop);
        await ready.Task.WaitAsync(TestWorker.GiveUp, Stop);
        Assert.True(client.Readiness.Ready);
        Assert.Equal("7", (await client.TranscribeAsync(Samples(7), null, Stop)).Text);
    }

    [Fact]
    public async Task Worker_ends_with_its_client()
    {
        int worker;
        await using (var client = TestWorker.Scripted())
        {
            await client.WarmUpAsync(Stop);
            worker = client.WorkerId!.Value;
        }

        Assert.Throws<ArgumentException>(() => Process.GetProcessById(worker));
        var ended = TestWorker.Scripted();
        await ended.DisposeAsync();
        await ended.DisposeAsync();
        await Assert.ThrowsAsync<ObjectDisposedException>(() => ended.TranscribeAsync(Samples(7), null, Stop));
    }

    [Fact]
    public async Task Worker_ends_by_itself_when_its_parent_is_gone()
    {
        var command = TestWorker.Command("scripted");
        using var worker = Process.Start(new ProcessStartInfo(command.FileName, command.Arguments) { RedirectStandardInput = true, RedirectStandardOutput = true })!;
        worker.StandardInput.Close();
        await worker.WaitForExitAsync(Stop).WaitAsync(TestWorker.GiveUp, Stop);
        Assert.Equal(0, worker.ExitCode);
    }
}
