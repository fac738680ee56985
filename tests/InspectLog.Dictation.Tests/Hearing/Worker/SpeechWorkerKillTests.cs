using System.Diagnostics;
using System.Globalization;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.Dictation.Tests.Hearing.Worker;

/// <summary>The real worker with the real model, killed in the middle of a note.</summary>
[Collection(SpeechFixture.OneAtATime)]
[Trait("Takes", "long")]
public sealed class SpeechWorkerKillTests(SpeechFixture fixture, ITestOutputHelper output)
{
    /// <summary>How often the worker is killed; more by hand: <c>INSPECTLOG_KILLS=50</c>.</summary>
    private static readonly int Kills =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_KILLS"), CultureInfo.InvariantCulture, out var kills) ? kills : 5;

    [Fact]
    public async Task Note_is_transcribed_in_the_end_however_often_the_worker_is_killed()
    {
        var audio = SpeechFixture.Recording("ps_librivox_0880.wav");
        await using var client = TestWorker.Client(TestWorker.Command("whisper"));
        var undisturbed = await client.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        Assert.NotEmpty(undisturbed.Text);

        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < Kills; i++)
        {
            var heard = await client.TranscribeAsync(audio, new KillOnce(client), TestContext.Current.CancellationToken);
            Assert.Equal(undisturbed.Text, heard.Text);
        }

        Assert.Equal(1 + Kills, client.Started);
        output.WriteLine($"{Kills} kills, {Stopwatch.GetElapsedTime(start).TotalSeconds / Kills:0.00} s a note");
    }

    [Fact]
    public async Task Words_come_through_with_their_times_and_probabilities()
    {
        var audio = SpeechFixture.Recording("ps_librivox_0880.wav");
        await using var client = TestWorker.Client(TestWorker.Command("whisper"));
        var heard = await client.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);
        Assert.All(heard.Words, word => Assert.InRange(word.Probability, double.Epsilon, 1));
        Assert.Equivalent(await fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken), heard, strict: true);
    }

    /// <summary>Sends SIGKILL to the worker when it says that it has begun.</summary>
    private sealed class KillOnce(SpeechWorkerClient client) : IProgress<double>
    {
        private bool _killed;

        public void Report(double value)
        {
            if (_killed)
                return;
            _killed = true;
            using var worker = Process.GetProcessById(client.WorkerId!.Value);
            worker.Kill();
        }
    }
}
