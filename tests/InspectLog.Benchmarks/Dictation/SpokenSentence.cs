using System.Text.Json;
using System.Text.Json.Serialization;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>A sentence of tests/corpus/spoken with the findings it means and its recording.</summary>
public sealed record SpokenSentence(string Id, string Text, IReadOnlyList<ExpectedFinding> Findings)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>Where the sentences and recordings are.</summary>
    public static string Folder => Path.Combine(CorpusFolder(), "spoken");

    /// <summary>Path of the recording.</summary>
    public string Recording => Path.Combine(Folder, Id + ".flac");

    /// <summary>All sentences, in order.</summary>
    public static IReadOnlyList<SpokenSentence> All() =>
    [
        .. File.ReadLines(Path.Combine(Folder, "sentences.jsonl"))
            .Select(line => JsonSerializer.Deserialize<SpokenSentence>(line, Json)
                ?? throw new ScoringException("sentences.jsonl holds a line that is no sentence.")),
    ];

    /// <summary>tests/corpus of the source tree the program was built in.</summary>
    private static string CorpusFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var corpus = Path.Combine(folder.FullName, "tests", "corpus");
            if (Directory.Exists(corpus))
                return corpus;
        }

        throw new ScoringException("tests/corpus was not found above the program. Run it from the source tree.");
    }
}
