using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.Benchmarks.Dictation;
using InspectLog.Dictation.Understanding.Language;
using Json.Schema;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>What the reader is made of: small files, and no word of English in them.</summary>
public sealed partial class ReaderSourceTests
{
    private const int LongestFile = 200;
    private const int MostLines = 7725;

    private static string Folder { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Corpus.File("look.jsonl"))!, "..", "..", "src", "InspectLog.Dictation", "Understanding"));

    private static List<(string File, string[] Lines)> Sources { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(file => (Path.GetRelativePath(Folder, file), File.ReadAllLines(file)))];

    [Fact]
    public void No_file_is_long_and_all_together_are_few_lines()
    {
        Assert.All(Sources, source => Assert.True(source.Lines.Length <= LongestFile, $"{source.File} has {source.Lines.Length} lines."));
        Assert.InRange(Sources.Sum(source => source.Lines.Length), 1, MostLines);
    }

    // What is worded for people (why an own word is refused, prompts for the speech model) and the pronouncing of letters are no
    // reading.
    [Fact]
    public void No_word_of_the_language_stands_in_the_code() =>
        Assert.All(Sources.Where(source => Path.GetDirectoryName(source.File) is "Language" or "Texts" or "Lattice" or "Events" or "Scoring" or "Saying"), source =>
            Assert.All(source.Lines.Where(IsCode), line => Assert.False(Word().IsMatch(line), $"{source.File}: {line.Trim()}")));

    [Fact]
    public void Language_file_keeps_to_its_schema()
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Folder, "Language", "language.schema.json")));
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "Language", "english.json")));

        Assert.True(schema.Evaluate(file.RootElement).IsValid);
    }

    [Fact]
    public void Language_file_has_words_for_every_role()
    {
        var file = SpokenLanguage.English.File;

        Assert.Equal(Enum.GetNames<SpeechRole>().Order(), file.Roles.Keys.Select(role => Enum.Parse<SpeechRole>(role, ignoreCase: true).ToString()).Order());
        Assert.All(file.Roles.Values.Concat(file.Actions.Values).Concat(file.Quantifiers.Values), Assert.NotEmpty);
    }

    private static bool IsCode(string line) => !line.TrimStart().StartsWith("//", StringComparison.Ordinal) && !line.Contains("JsonPropertyName", StringComparison.Ordinal);

    // A literal of small letters with or without spaces; resources have a point in their names.
    [GeneratedRegex("(?<!\\$)\"[a-z][a-z ']*\"")]
    private static partial Regex Word();
}
