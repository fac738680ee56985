using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores how well dictation is understood.</summary>
internal static class DictationCommand
{
    public static int Run(string[] arguments)
    {
        if (!arguments.Contains("--text"))
        {
            Console.Error.WriteLine("Say what to score: --text.");
            return 2;
        }

        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        foreach (var file in Corpus.Files())
        {
            var score = new Score();
            foreach (var utterance in Utterance.Load(file))
            {
                score.Add(utterance, utterance.Text, reader.Read(utterance.Text, utterance.OpenCheck));
            }

            score.Print(Console.Out, Path.GetFileName(file), arguments.Contains("--misses"));
        }

        return 0;
    }
}
