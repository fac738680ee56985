namespace InspectLog.Benchmarks.Dictation;

/// <summary>Where the corpus of utterances lies.</summary>
internal static class Corpus
{
    /// <summary>Name of the part that is only scored, never looked at.</summary>
    public const string ScoredOnly = "scored.jsonl";

    /// <summary>Every file of utterances, in the folder tests/corpus above the place the program runs from.</summary>
    public static IEnumerable<string> Files() =>
        Directory.EnumerateFiles(Folder(), "*.jsonl", SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    /// <summary>One file of the corpus.</summary>
    public static string File(string name) => Path.Combine(Folder(), name);

    private static string Folder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var corpus = Path.Combine(at.FullName, "tests", "corpus");
            if (Directory.Exists(corpus))
            {
                return corpus;
            }
        }

        throw new DirectoryNotFoundException("There is no folder tests/corpus above the program.");
    }
}
