using System.Globalization;
using InspectLog.Benchmarks.Dictation.Voices;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores how well dictation is heard and understood.</summary>
internal static class DictationCommand
{
    public static async Task<int> RunAsync(string[] arguments)
    {
        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        if (arguments is ["--fuzz", var count] && int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var texts))
        {
            return ReaderFuzz.Run(reader, texts, Console.Out);
        }

        var misses = arguments.Contains("--misses");
        if (arguments.Contains("--voices"))
        {
            return await ScoreVoicesAsync(reader, arguments, misses);
        }

        var files = arguments.Where(argument => argument.EndsWith(".jsonl", StringComparison.Ordinal)).ToList();
        ScoreTexts(reader, files.Count > 0 ? files : Corpus.Files(), misses);
        if (arguments.Contains("--text"))
        {
            return 0;
        }

        try
        {
            await SpokenScore.RunAsync(Console.Out, reader, arguments.Contains("--baseline"), misses);
            return 0;
        }
        catch (ScoringException problem)
        {
            await Console.Error.WriteLineAsync(problem.Message);
            return 1;
        }
    }

    private static async Task<int> ScoreVoicesAsync(FindingReader reader, string[] arguments, bool misses)
    {
        var every = arguments.SkipWhile(argument => argument != "--every").Skip(1).FirstOrDefault() is { } number
            ? int.Parse(number, CultureInfo.InvariantCulture) : 1;
        var look = arguments.Contains("--look");
        var file = Corpus.File(look ? "look.jsonl" : "scored.jsonl");
        try
        {
            await VoicesScore.RunAsync(Console.Out, reader, file, every, misses && look);
            return 0;
        }
        catch (ScoringException problem)
        {
            await Console.Error.WriteLineAsync(problem.Message);
            return 1;
        }
    }

    // Each file by itself, and within it each form. The misses of the part that is only scored are never shown: who
    // reads them begins to tune to them.
    private static void ScoreTexts(FindingReader reader, IEnumerable<string> files, bool misses)
    {
        foreach (var file in files)
        {
            var shown = misses && Path.GetFileName(file) != Corpus.ScoredOnly;
            foreach (var form in Utterance.Load(file).GroupBy(utterance => utterance.Form, StringComparer.Ordinal))
            {
                var score = new Score();
                foreach (var utterance in form)
                {
                    score.Add(utterance, utterance.Text, reader.Read(utterance.Text, utterance.OpenCheck));
                }

                score.Print(Console.Out, $"{Path.GetFileName(file)}, {form.Key}", shown);
            }
        }
    }
}
