using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Scores the reading of findings from the sentences as written.</summary>
internal static class TextScore
{
    public static void Run(TextWriter output)
    {
        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        var sentences = SpokenSentence.All();
        var exact = 0;
        foreach (var sentence in sentences)
        {
            var found = reader.Read(sentence.Text);
            if (ExpectedFinding.Same(sentence.Findings, found))
                exact++;
            else
                output.WriteLine($"  {sentence.Id} {sentence.Text}\n      {FindingText.Of(found)}");
        }

        output.WriteLine($"Text to findings: {exact} of {sentences.Count} exact");
    }
}
