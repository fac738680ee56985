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
        var misses = arguments.Contains("--misses");
        if (arguments.Contains("--voices"))
        {
            return await ScoreVoicesAsync(reader, arguments, misses);
        }

        ScoreTexts(reader, misses);
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

    private static void ScoreTexts(FindingReader reader, bool misses)
    {
        foreach (var file in Corpus.Files())
        {
            var score = new Score();
            foreach (var utterance in Utterance.Load(file))
            {
                score.Add(utterance, utterance.Text, reader.Read(utterance.Text, utterance.OpenCheck));
            }

            score.Print(Console.Out, Path.GetFileName(file), misses);
        }
    }
}
