using System.Text.Json;
using System.Text.Json.Serialization;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>The language file as it is written; its schema, <c>language.schema.json</c>, says what each member means.</summary>
internal sealed record LanguageFile
{
    public required IReadOnlyDictionary<string, string> Contractions { get; init; }

    public required IReadOnlyDictionary<string, string> Suffixes { get; init; }

    public required IReadOnlyDictionary<string, string> Spellings { get; init; }

    public required IReadOnlyDictionary<string, string> Signs { get; init; }

    public required IReadOnlyDictionary<string, string> BeforeFigures { get; init; }

    public required IReadOnlyDictionary<string, string> AfterFigures { get; init; }

    public required IReadOnlyList<string> Fillers { get; init; }

    public required IReadOnlyList<Ending> Endings { get; init; }

    public required NumberWordsFile Numbers { get; init; }

    public required IReadOnlyList<UnitNames> Units { get; init; }

    public required IReadOnlyList<string> ZeroAngles { get; init; }

    public required IReadOnlyList<string> LateAngles { get; init; }

    public required IReadOnlyList<string> EarlyAngles { get; init; }

    public required IReadOnlyList<string> OtherUnits { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Actions { get; init; }

    public required IReadOnlyList<string> Praise { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Roles { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Quantifiers { get; init; }

    public required PlaceWordsFile Places { get; init; }

    public required ClauseWordsFile Clauses { get; init; }

    public required IReadOnlyList<string> Ties { get; init; }

    public required IReadOnlyList<string> Links { get; init; }

    public required IReadOnlyList<string> Articles { get; init; }

    public required IReadOnlyList<string> Small { get; init; }

    /// <summary>Reads a language file.</summary>
    /// <exception cref="JsonException">It is none.</exception>
    public static LanguageFile Parse(ReadOnlySpan<byte> json) =>
        JsonSerializer.Deserialize(json, LanguageJson.Default.LanguageFile) ?? throw new JsonException("The language file is empty.");
}

/// <summary>An ending that a stem lacks.</summary>
internal sealed record Ending([property: JsonPropertyName("ending")] string Letters, IReadOnlyList<string>? After, IReadOnlyList<string>? NotAfter, int Least);

/// <summary>The words of numbers.</summary>
internal sealed record NumberWordsFile(
    IReadOnlyDictionary<string, int> Units,
    IReadOnlyDictionary<string, int> Teens,
    IReadOnlyDictionary<string, int> Tens,
    IReadOnlyDictionary<string, int> Multiples,
    IReadOnlyDictionary<string, int> Ordinals,
    IReadOnlyDictionary<string, double> Fractions,
    IReadOnlyList<string> Points,
    IReadOnlyList<string> Minus,
    IReadOnlyList<string> And,
    IReadOnlyList<string> One,
    IReadOnlyDictionary<string, int> Alikes,
    IReadOnlyList<string> WeakAlikes);

/// <summary>The spoken names of a unit, or of a part or multiple of it.</summary>
internal sealed record UnitNames(string Unit, double? Times, IReadOnlyList<string> Names, IReadOnlyList<string>? Glued);

/// <summary>The words that join, stretch and count places.</summary>
internal sealed record PlaceWordsFile(
    IReadOnlyList<string> Range,
    IReadOnlyList<string> Join,
    IReadOnlyList<string> First,
    IReadOnlyList<string> Last,
    IReadOnlyList<string> Onward,
    IReadOnlyList<string> UpTo,
    IReadOnlyList<string> Past,
    IReadOnlyList<string> From,
    IReadOnlyList<string> Noun);

/// <summary>The marks and words between clauses.</summary>
internal sealed record ClauseWordsFile(IReadOnlyList<string> Ends, IReadOnlyList<string> Parts, IReadOnlyList<string> Joins);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(LanguageFile))]
internal sealed partial class LanguageJson : JsonSerializerContext;
