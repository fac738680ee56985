namespace InspectLog.Training;

/// <summary>Learns the weights that come with the program.</summary>
public static class ReaderTraining
{
    /// <summary>The part of the corpus that is only scored.</summary>
    private const string ScoredOnly = "scored.jsonl";

    /// <summary>The weights by all notes of the corpus but those that are only scored.</summary>
    /// <param name="log">Where to say how it goes.</param>
    public static byte[] Train(TextWriter log) => new ReaderTrainer(new(Files(), []), log).Train();

    /// <summary>The files learned from, in order.</summary>
    internal static IReadOnlyList<string> Files() =>
        [.. Directory.EnumerateFiles(Folder("tests", "corpus"), "*.jsonl").Where(file => Path.GetFileName(file) != ScoredOnly).Order(StringComparer.Ordinal)];

    /// <summary>A folder of the repository.</summary>
    internal static string Folder(params string[] parts)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var folder = Path.Combine([at.FullName, .. parts]);
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        throw new DirectoryNotFoundException($"There is no folder {Path.Combine(parts)} above the program.");
    }
}
