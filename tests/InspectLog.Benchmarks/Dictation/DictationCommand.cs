using InspectLog.Benchmarks.Dictation.Fuzz;
using InspectLog.Benchmarks.Dictation.Voices;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores how well dictation is heard and understood.</summary>
internal static class DictationCommand
{
    public static async Task<int> RunAsync(string[] arguments)
    {
        try
        {
            return await ChosenAsync(arguments);
        }
        catch (ScoringException problem)
        {
            await Console.Error.WriteLineAsync(problem.Message);
            return 1;
        }
    }

    private static async Task<int> ChosenAsync(string[] arguments)
    {
        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        if (arguments.Contains("--fuzz"))
        {
            return new ReaderFuzz(reader).Run(CountOption.Read(arguments, "--fuzz", otherwise: 1), Console.Out);
        }

        var misses = arguments.Contains("--misses");
        if (arguments.Contains("--voices"))
        {
            await ScoreVoicesAsync(reader, arguments, misses);
            return 0;
        }

        var files = arguments.Where(argument => argument.EndsWith(".jsonl", StringComparison.Ordinal)).ToList();
        ScoreTexts(files.Count > 0 ? files : Corpus.Files(), misses);
        if (arguments.Contains("--text"))
        {
            return 0;
        }

        int? noise = arguments.Contains("--noise") ? CountOption.Read(arguments, "--noise", otherwise: 0) : null;
        await SpokenScore.RunAsync(Console.Out, reader, noise, arguments.Contains("--baseline"), misses);
        return 0;
    }

    private static async Task ScoreVoicesAsync(FindingReader reader, string[] arguments, bool misses)
    {
        var look = arguments.Contains("--look");
        var file = Array.Find(arguments, argument => argument.EndsWith(".jsonl", StringComparison.Ordinal))
            ?? Corpus.File(look ? "look.jsonl" : "scored.jsonl");
        var every = CountOption.Read(arguments, "--every", otherwise: 1);
        await VoicesScore.RunAsync(Console.Out, reader, file, every, misses && look);
    }

    // Each file by itself, and within it each form. The misses of the part that is only scored are never shown: who
    // reads them begins to tune to them.
    private static void ScoreTexts(IEnumerable<string> files, bool misses)
    {
        var readers = new SheetReaders();
        foreach (var file in files)
        {
            var shown = misses && Path.GetFileName(file) != Corpus.ScoredOnly;
            foreach (var form in Utterance.Load(file).GroupBy(utterance => utterance.Form, StringComparer.Ordinal))
            {
                var score = new Score();
                foreach (var utterance in form)
                {
                    score.Add(utterance, utterance.Text, readers.Read(utterance));
                }

                score.Print(Console.Out, $"{Path.GetFileName(file)}, {form.Key}", shown);
            }
        }
    }
}
