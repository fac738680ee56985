using System.Collections.Frozen;
using System.Reflection;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>The words of a language, ready to be looked up. Everything the reader knows of English comes from its file;
/// what the trade says comes from the sheet.</summary>
internal sealed partial class SpokenLanguage
{
    private const string Resource = "english.json";

    private static readonly Lazy<SpokenLanguage> OfProgram = new(() => new(LanguageFile.Parse(Load())));

    private readonly string[] _ties;

    public SpokenLanguage(LanguageFile file)
    {
        File = file;
        Stems = new(file);
        Tokenizer = new(file, Stems);
        Numbers = new(file.Numbers);
        Units = new(file, Tokenizer);
        Places = new(file.Places, Tokenizer);
        _ties = [.. file.Ties];
        Articles = file.Articles.ToFrozenSet(StringComparer.Ordinal);
        Links = [.. file.Links.Select(Tokenizer.StemsOf)];
        Small = file.Small.ToFrozenSet(StringComparer.Ordinal);
        ClauseEnds = file.Clauses.Ends.ToFrozenSet(StringComparer.Ordinal);
        ClauseParts = file.Clauses.Parts.ToFrozenSet(StringComparer.Ordinal);
        ClauseJoins = file.Clauses.Joins.ToFrozenSet(StringComparer.Ordinal);
        foreach (var (action, phrases) in file.Actions)
        {
            Add(Actions, phrases, action);
        }

        foreach (var (role, phrases) in file.Roles)
        {
            Add(Roles, phrases, Enum.Parse<SpeechRole>(role, ignoreCase: true));
        }

        Add(Roles, file.LateAngles, SpeechRole.Late);
        foreach (var (quantifier, phrases) in file.Quantifiers)
        {
            Add(Quantifiers, phrases, Enum.Parse<Quantifier>(quantifier, ignoreCase: true));
        }

        Praise = [.. file.Praise.Select(Tokenizer.StemsOf)];
    }

    /// <summary>The language of the program.</summary>
    public static SpokenLanguage English => OfProgram.Value;

    public LanguageFile File { get; }

    public Stemmer Stems { get; }

    public Tokenizer Tokenizer { get; }

    public NumberVocabulary Numbers { get; }

    public UnitVocabulary Units { get; }

    public PlaceVocabulary Places { get; }

    public PhraseTrie<string> Actions { get; } = new();

    public PhraseTrie<SpeechRole> Roles { get; } = new();

    public PhraseTrie<Quantifier> Quantifiers { get; } = new();

    /// <summary>Words of general praise, which mean the good condition of whatever is spoken of.</summary>
    public IReadOnlyList<string[]> Praise { get; }

    /// <summary>Words that say nothing by themselves.</summary>
    public FrozenSet<string> Small { get; }

    public FrozenSet<string> ClauseEnds { get; }

    public FrozenSet<string> ClauseParts { get; }

    public FrozenSet<string> ClauseJoins { get; }

    private void Add<T>(PhraseTrie<T> to, IEnumerable<string> phrases, T meaning)
    {
        foreach (var phrase in phrases)
        {
            to.Add(Tokenizer.StemsOf(phrase), meaning);
        }
    }

    private static byte[] Load()
    {
        using var resource = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var bytes = new MemoryStream();
        resource.CopyTo(bytes);
        return bytes.ToArray();
    }
}
