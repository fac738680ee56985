using System.Diagnostics;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores hearing: recordings to transcripts to findings, with word error and time.</summary>
internal static class SpokenScore
{
    public static async Task RunAsync(TextWriter output, bool withBaseline)
    {
        var models = SpeechModels.Shipped();
        await using var speech = new WhisperSpeech(models);
        using var bare = withBaseline ? new BareWhisper(models.Whisper.Path) : null;
        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        var (ours, baseline) = (new Tally(), new Tally());
        var sentences = SpokenSentence.All();
        var exact = 0;

        await WarmUpAsync(speech, bare, sentences[0]);
        foreach (var sentence in sentences)
        {
            var audio = await FlacFile.ReadAsync(sentence.Recording);

            // One after the other on the same clip, so that other work on the machine weighs on both alike.
            var heard = await ours.TimeAsync(sentence.Text, async () => (await speech.TranscribeAsync(audio, null, default)).Text);
            if (bare is not null)
                await baseline.TimeAsync(sentence.Text, () => bare.TranscribeAsync(audio));

            var found = reader.Read(heard);
            if (ExpectedFinding.Same(sentence.Findings, found))
                exact++;
            else
                output.WriteLine($"  {sentence.Id} {sentence.Text}\n      heard {heard}\n      {FindingText.Of(found)}");
        }

        output.WriteLine($"Spoken to findings: {exact} of {sentences.Count} exact");
        output.WriteLine($"Heard: {ours}; decoded again with the whole window: {speech.Redone}");
        if (bare is not null)
            output.WriteLine($"Bare Whisper.net: {baseline}; time ratio {ours.Elapsed / baseline.Elapsed:0.000}");
    }

    private static async Task WarmUpAsync(WhisperSpeech speech, BareWhisper? bare, SpokenSentence sentence)
    {
        var audio = await FlacFile.ReadAsync(sentence.Recording);
        await speech.TranscribeAsync(audio, null, default);
        if (bare is not null)
            await bare.TranscribeAsync(audio);
    }

    private sealed class Tally
    {
        private readonly WordErrorRate _error = new();
        private int _clips;

        public TimeSpan Elapsed { get; private set; }

        public async Task<string> TimeAsync(string said, Func<Task<string>> transcribe)
        {
            var start = Stopwatch.GetTimestamp();
            var heard = await transcribe();
            Elapsed += Stopwatch.GetElapsedTime(start);
            _error.Add(said, heard);
            _clips++;
            return heard;
        }

        public override string ToString() =>
            $"word error {_error.Rate:P1} ({_error.Errors} of {_error.Words}), {Elapsed.TotalSeconds / Math.Max(1, _clips):0.00} s a clip";
    }
}
