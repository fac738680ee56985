using System.Text.Json;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Tests.Commands;

public sealed class TranscribeVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Json_gives_one_line_a_file_with_words_and_times()
    {
        var (first, second) = (Recording("a.wav"), Recording("b.wav"));

        var run = await CommandRun.WithAsync(new SaysOneThing(), "", "transcribe", first, second, "--json");

        Assert.Equal(0, run.ExitCode);
        Assert.Equal(2, run.Lines.Count);
        Assert.Equal(
            $$"""{"file":{{JsonSerializer.Serialize(first)}},"text":"Coil 9.4 kΩ.","words":[{"text":"Coil","start":0.1,"end":0.4,"probability":0.9},{"text":"9.4","start":0.4,"end":0.9,"probability":0.8},{"text":"kΩ.","start":0.9,"end":1.2,"probability":0.7}]}""",
            run.Lines[0]);
        Assert.Equal(second, JsonDocument.Parse(run.Lines[1]).RootElement.GetProperty("file").GetString());
    }

    [Fact]
    public async Task Text_gives_the_words()
    {
        var file = Recording("a.wav");

        var run = await CommandRun.WithAsync(new SaysOneThing(), "", "transcribe", file);

        Assert.Equal($"{file}: Coil 9.4 kΩ.", run.Out.Trim());
    }

    [Fact]
    public async Task A_file_that_is_no_recording_is_told_of_and_the_others_are_transcribed()
    {
        var notWav = Path.Combine(_folder.FullName, "notes.wav");
        await File.WriteAllTextAsync(notWav, "not a recording", TestContext.Current.CancellationToken);
        var missing = Path.Combine(_folder.FullName, "missing.wav");
        var good = Recording("good.wav");

        var run = await CommandRun.WithAsync(new SaysOneThing(), "", "transcribe", notWav, missing, good, "--json");

        Assert.Equal(2, run.ExitCode);
        Assert.Equal([notWav, missing, good], run.Lines.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("file").GetString()));
        Assert.Contains($"{missing}: There is no such file.", run.Error, StringComparison.Ordinal);
        Assert.Contains($"{notWav}: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_too_large_to_be_a_recording_is_not_read()
    {
        var large = Path.Combine(_folder.FullName, "large.wav");
        using (var stream = File.Create(large))
            stream.SetLength(WavFile.LargestFile + 1);

        var run = await CommandRun.WithAsync(new SaysOneThing(), "", "transcribe", large);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("10 minutes at most", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_model_it_says_what_is_missing()
    {
        var run = await CommandRun.OfAsync("transcribe", Recording("a.wav"));

        Assert.Equal((3, "", "There is no speech model here."), (run.ExitCode, run.Out, run.Error.Trim()));
    }

    [Fact]
    public async Task An_unknown_sheet_is_refused_with_the_sheets_there_are()
    {
        var run = await CommandRun.OfAsync("transcribe", Recording("a.wav"), "--sheet", "brakes");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("ignition-breakerless", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cylinders_without_a_sheet_are_refused()
    {
        var run = await CommandRun.OfAsync("transcribe", Recording("a.wav"), "--cylinders", "4");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("Name one with --sheet ID or --sheet FILE.", run.Error, StringComparison.Ordinal);
    }

    private string Recording(string name)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, WavFile.Write(new PcmAudio(new float[PcmAudio.SampleRate])));
        return path;
    }

    private sealed class SaysOneThing : ISpeechToText
    {
        public SpeechReadiness Readiness => new(true, "one", null, null);

        public Task<Transcript> TranscribeAsync(
            PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken) =>
            Task.FromResult(new Transcript(
                "Coil 9.4 kΩ.",
                [new("Coil", 0.1, 0.4, 0.9, 0), new("9.4", 0.4, 0.9, 0.8, 5), new("kΩ.", 0.9, 1.2, 0.7, 9)],
                SpeechFound: true,
                audio.Duration));
    }
}
