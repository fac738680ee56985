using InspectLog.Benchmarks.Dictation.Voices;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Vocabulary;
using InspectLog.Inspecting.Standing;
using System.Diagnostics;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores hearing: the corpus's recordings to transcripts to findings, with word error and time.</summary>
internal static class SpokenScore
{
    private const string Folder = "spoken";

    /// <summary>Scores.</summary>
    /// <param name="output">Where the figures go.</param>
    /// <param name="reader">Reads what was heard.</param>
    /// <param name="noise">Decibels of the voice over a garage's noise; null for the recordings as they are.</param>
    /// <param name="withBaseline">Whether bare Whisper.net hears them too.</param>
    /// <param name="misses">Whether to list what was missed.</param>
    public static async Task RunAsync(TextWriter output, FindingReader reader, int? noise, bool withBaseline, bool misses)
    {
        var models = SpeechModels.Shipped();
        await using var speech = new WhisperSpeech(models);
        using var bare = withBaseline ? new BareWhisper(models.Whisper.Path) : null;
        var (ours, baseline) = (new Tally(), new Tally());
        var score = new Score();
        var utterances = Utterance.Load(Corpus.File(Path.Combine(Folder, "sentences.jsonl")));

        await WarmUpAsync(speech, bare, utterances[0]);
        foreach (var (seed, utterance) in utterances.Index())
        {
            var recording = await RecordingOf(utterance);
            var audio = noise is { } ratio ? GarageNoise.Behind(recording, ratio, seed) : recording;

            // One after the other on the same clip, so that other work on the machine weighs on both alike.
            var heard = await ours.TimeAsync(utterance.Text, () => speech.TranscribeAsync(audio, ExamplesFor(reader, utterance), null, default), one => one.Text);
            if (bare is not null)
            {
                await baseline.TimeAsync(utterance.Text, () => bare.TranscribeAsync(audio), one => one);
            }

            score.Add(utterance, heard.Text, reader.Read(heard, utterance.OpenCheck));
        }

        score.Print(output, noise is null ? "spoken recordings" : $"spoken recordings in noise at {noise} dB", misses);
        output.WriteLine($"  heard: {ours}; heard again: {speech.Again.HeardAgain}, with the whole window: {speech.Again.WithWholeWindow}");
        if (bare is not null)
        {
            output.WriteLine($"  bare Whisper.net: {baseline}; time ratio {ours.Elapsed / baseline.Elapsed:0.000}");
        }
    }

    private static async Task WarmUpAsync(WhisperSpeech speech, BareWhisper? bare, Utterance utterance)
    {
        var audio = await RecordingOf(utterance);
        await speech.TranscribeAsync(audio, null, default);
        if (bare is not null)
        {
            await bare.TranscribeAsync(audio);
        }
    }

    /// <summary>What the program gives the model to go by.</summary>
    internal static string ExamplesFor(FindingReader reader, Utterance utterance) =>
        ExampleFindings.Prompt(reader.Sheet, utterance.OpenCheck, reader.OwnWords);

    private static Task<PcmAudio> RecordingOf(Utterance utterance) =>
        FlacFile.ReadAsync(Corpus.File(Path.Combine(Folder, utterance.Id + ".flac")));

    private sealed class Tally
    {
        private readonly WordErrorRate _error = new();
        private int _clips;

        public TimeSpan Elapsed { get; private set; }

        public async Task<T> TimeAsync<T>(string said, Func<Task<T>> transcribe, Func<T, string> textOf)
        {
            var start = Stopwatch.GetTimestamp();
            var heard = await transcribe();
            Elapsed += Stopwatch.GetElapsedTime(start);
            _error.Add(said, textOf(heard));
            _clips++;
            return heard;
        }

        public override string ToString() =>
            $"word error {_error.Rate:P1} ({_error.Errors} of {_error.Words}), {Elapsed.TotalSeconds / Math.Max(1, _clips):0.00} s a clip";
    }
}
