using System.Text.RegularExpressions;
using InspectLog.Benchmarks.Dictation;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>Real people, the shipped model. See Recordings/README.md for where the clips and their words are from.</summary>
[Collection(SpeechFixture.OneAtATime)]
[Trait("Takes", "long")]
public sealed partial class RecordedSpeechTests(SpeechFixture fixture, ITestOutputHelper output)
{
    /// <summary>A clip of seven seconds; by its level the voice begins at 0.2 s and ends at 6.8 s.</summary>
    private const string Clip = "ps_librivox_0870.wav";

    private const string Said =
        "and mister john dashwood had then leisure to consider how much there might be prudently in his power to do for them";

    [Fact]
    public async Task LibriVox_clips_have_a_word_error_of_five_per_cent_or_less()
    {
        var error = new WordErrorRate();
        foreach (var (clip, said) in LibriVox())
        {
            var heard = await Transcribe(SpeechFixture.Recording(clip));
            output.WriteLine($"{error.Add(said, heard.Text)} errors: {heard.Text}");
        }

        output.WriteLine($"{error.Errors} errors in {error.Words} words: {error.Rate:P1}");
        Assert.Equal(71, error.Words);
        Assert.InRange(error.Rate, 0, 0.05);
    }

    [Fact]
    public async Task Words_have_times_in_order_and_positions_in_the_text()
    {
        var audio = SpeechFixture.Recording(Clip);
        var heard = await Transcribe(audio);

        Assert.True(heard.SpeechFound);
        Assert.Equal(audio.Duration, heard.Duration);
        Assert.Equal(heard.Text, string.Join(' ', heard.Words.Select(word => word.Text)));
        Assert.All(heard.Words, word =>
        {
            Assert.Equal(word.Text, heard.Text.Substring(word.At, word.Text.Length));
            Assert.InRange(word.Probability, double.Epsilon, 1);
            Assert.InRange(word.Start, 0, word.End);
            Assert.InRange(word.End, word.Start, audio.Duration.TotalSeconds);
        });
        Assert.All(heard.Words.Zip(heard.Words.Skip(1)), pair => Assert.True(pair.First.Start <= pair.Second.Start));

        Assert.InRange(heard.Words[0].Start, 0, 0.7);
        Assert.InRange(heard.Words[^1].Start, 5.8, 6.8);
        Assert.InRange(heard.Words[^1].End, 6.3, audio.Duration.TotalSeconds);
    }

    [Fact]
    public async Task Times_and_words_survive_silence_before_and_between()
    {
        const int silence = 12;
        var once = SpeechFixture.Recording(Clip).Samples.ToArray();
        var quiet = new float[silence * PcmAudio.SampleRate];
        var heard = await Transcribe(new PcmAudio(new[] { quiet, once, quiet, once }.SelectMany(part => part).ToArray()));

        var error = new WordErrorRate();
        error.Add($"{Said} {Said}", heard.Text);
        Assert.InRange(error.Rate, 0, 0.05);
        var starts = heard.Words.Where(word => word.Text.StartsWith("leisure", StringComparison.OrdinalIgnoreCase)).Select(word => word.Start).ToList();
        Assert.Equal(2, starts.Count);
        // It is the seventh word of twenty-two, so it comes in the first half of the clip.
        const double clip = 7.1;
        Assert.InRange(starts[0], silence + 0.8, silence + (clip / 2));
        Assert.InRange(starts[1], (2 * silence) + clip + 0.8, (2 * silence) + clip + (clip / 2));
    }

    [Fact]
    public async Task Long_recording_is_heard_to_its_end_and_reports_progress()
    {
        var clips = LibriVox().ToList();
        var samples = Enumerable.Repeat(clips, 3).SelectMany(all => all).SelectMany(clip => SpeechFixture.Recording(clip.Clip).Samples.ToArray()).ToArray();
        var progress = new RecordedProgress();
        var heard = await fixture.Speech.TranscribeAsync(new PcmAudio(samples), progress, TestContext.Current.CancellationToken);

        var error = new WordErrorRate();
        error.Add(string.Join(' ', Enumerable.Repeat(clips, 3).SelectMany(all => all).Select(clip => clip.Said)), heard.Text);
        output.WriteLine($"{error.Rate:P1} over {heard.Duration}: {heard.Text}");
        Assert.InRange(error.Rate, 0, 0.10);
        Assert.Equal(progress.Values.Order(), progress.Values);
        Assert.Equal([0.0, 1.0], [progress.Values[0], progress.Values[^1]]);
        Assert.True(progress.Values.Distinct().Count() >= 4);
    }

    [Fact]
    public async Task Same_recording_gives_the_same_transcript_twice_and_in_parallel()
    {
        var audio = SpeechFixture.Recording("ps_librivox_0880.wav");
        var transcripts = await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => Transcribe(audio)));
        Assert.Single(transcripts.Select(transcript => transcript.Text).Distinct());
    }

    [Fact]
    public async Task Cancelled_transcription_stops_and_the_next_one_works()
    {
        var audio = SpeechFixture.Recording(Clip);
        using var cancel = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var stopWhenHearing = new RecordedProgress(share =>
        {
            if (share > 0)
                cancel.Cancel();
        });

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => fixture.Speech.TranscribeAsync(audio, stopWhenHearing, cancel.Token));
        Assert.Contains("leisure", (await Transcribe(audio)).Text, StringComparison.Ordinal);
    }

    private static IEnumerable<(string Clip, string Said)> LibriVox() =>
        from line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Recordings", "ps_librivox.transcription"))
        let match = TranscriptionLine().Match(line)
        where match.Success
        select ($"ps_librivox_{match.Groups["clip"].Value}.wav", match.Groups["said"].Value);

    private Task<Transcript> Transcribe(PcmAudio audio) => fixture.Speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);

    [GeneratedRegex(@"^<s> (?<said>.*?)\s*</s> \(.*-(?<clip>\d+)\)$")]
    private static partial Regex TranscriptionLine();

    private sealed class RecordedProgress(Action<double>? then = null) : IProgress<double>
    {
        public List<double> Values { get; } = [];

        public void Report(double value)
        {
            Values.Add(value);
            then?.Invoke(value);
        }
    }
}
