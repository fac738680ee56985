using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation.Voices;

/// <summary>Scores hearing over synthetic voices, clean and in noise: a part of the corpus spoken, heard and read.</summary>
internal static class VoicesScore
{
    /// <summary>Signal to noise, decibels; null is clean.</summary>
    private static readonly double?[] Levels = [null, 20, 10, 5];

    /// <summary>Scores.</summary>
    /// <param name="output">Where the figures go.</param>
    /// <param name="reader">Reads what was heard.</param>
    /// <param name="file">The part of the corpus.</param>
    /// <param name="every">Each voice and level speaks every so-manieth utterance, each starting at another; 1 speaks all.</param>
    /// <param name="misses">Whether to list what was missed.</param>
    public static async Task RunAsync(TextWriter output, FindingReader reader, string file, int every, bool misses)
    {
        await using var speech = new WhisperSpeech(SpeechModels.Shipped());
        await speech.WarmUpAsync(default);
        var utterances = Utterance.Load(file).Where(utterance => utterance.Form == "spoken").ToList();
        output.WriteLine($"{Path.GetFileName(file)} spoken by flite, 1 utterance in {every} for each voice and level");
        output.WriteLine($"  {"voice",-6} {"noise",-6} {"heard",5}  {"exact",7}  {"precision",9}  {"recall",7}  {"unmarked",9}  {"words",7}");

        var offset = 0;
        foreach (var level in Levels)
        {
            var all = new Score();
            var allWords = new WordErrorRate();
            foreach (var voice in FliteVoice.All)
            {
                var (score, words) = (new Score(), new WordErrorRate());
                for (var i = offset++ % every; i < utterances.Count; i += every)
                {
                    await Console.Error.WriteAsync($"\r{voice.Name} {Name(level)} {i + 1}/{utterances.Count}   ");
                    var utterance = utterances[i];
                    var said = await voice.SpeakAsync(utterance.Text);
                    var audio = level is { } ratio ? GarageNoise.Behind(said, ratio, seed: i) : said;
                    var heard = await speech.TranscribeAsync(audio, SpokenScore.ExamplesFor(reader, utterance), null, default);
                    var findings = reader.Read(heard, utterance.OpenCheck);
                    foreach (var (one, wordError) in new[] { (score, words), (all, allWords) })
                    {
                        one.Add(utterance, heard.Text, findings);
                        wordError.Add(utterance.Text, heard.Text);
                    }
                }

                PrintLine(output, voice.Name, level, score, words);
            }

            await Console.Error.WriteLineAsync();
            PrintLine(output, "all", level, all, allWords);
            all.Print(output, $"all voices, {Name(level)}", misses);
        }

        output.WriteLine($"  heard again: {speech.Again.HeardAgain}, with the whole window: {speech.Again.WithWholeWindow}");
    }

    private static void PrintLine(TextWriter output, string voice, double? level, Score score, WordErrorRate words)
    {
        var (right, read, meant) = score.Findings;
        output.WriteLine($"  {voice,-6} {Name(level),-6} {score.Utterances,5}  {score.ExactShare,7:P1}  {Share(right, read),9}  {Share(right, meant),7}"
            + $"  {score.WrongUnmarked,4}/{score.Read,-4}  {words.Rate,7:P1}");
    }

    private static string Share(int part, int whole) => whole == 0 ? "-" : $"{(double)part / whole:P1}";

    private static string Name(double? level) => level is { } ratio ? $"{ratio:0} dB" : "clean";
}
