using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Sounds;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>The phrases of one sheet, of the workshop's own words, and what they mean. What the sheet says of a word wins
/// over what the language says.</summary>
internal sealed class SheetLexicon
{
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly HashSet<(string Phrase, int Check)> _general = [];
    private readonly Lazy<SoundLexicon> _sounds;
    private readonly Lazy<LooseNames> _loose;
    private readonly HashSet<string> _placeNouns = new(StringComparer.Ordinal);

    public SheetLexicon(CheckSheet sheet, IReadOnlyList<OwnWord> ownWords, SpokenLanguage language)
    {
        (Sheet, Language) = (sheet, language);
        _sounds = new(() => new(this));
        _loose = new(() => new(this));
        Checks = [.. sheet.Checks.Select((check, index) => new CheckEntry(check, index, check.Places?.CountFor(sheet.Cylinders) ?? 0, check.PlaceNoun is { } noun ? language.Tokenizer.StemsOf(noun)[^1] : null))];
        foreach (var check in Checks)
        {
            AddNames(check);
            AddPlaceNames(check);
            AddConditions(check);
        }

        foreach (var word in ownWords)
        {
            AddOwn(word);
        }

        foreach (var check in Checks.Where(check => check.FirstGood >= 0 && check.Check.Conditions.Count > 1))
        {
            AddPraise(check);
        }

        _known.UnionWith(Names.Stems.Concat(PlaceNames.Stems).Concat(Conditions.Stems).Concat(language.Actions.Stems).Concat(language.Roles.Stems).Concat(language.Quantifiers.Stems));
    }

    public CheckSheet Sheet { get; }

    /// <summary>How the phrases sound.</summary>
    public SoundLexicon Sounds => _sounds.Value;

    /// <summary>The single words of what checks are called.</summary>
    public LooseNames Loose => _loose.Value;

    public SpokenLanguage Language { get; }

    public IReadOnlyList<CheckEntry> Checks { get; }

    /// <summary>The most places any check has.</summary>
    public int Places => Math.Max(Sheet.Cylinders, Checks.Max(check => check.Places));

    /// <summary>The names of places that go by name.</summary>
    public PhraseTrie<int> PlaceNames { get; } = new();

    public PhraseTrie<Naming> Names { get; } = new();

    public PhraseTrie<Meaning> Conditions { get; } = new();

    /// <summary>Whether a stem is part of any phrase of the sheet or the language.</summary>
    public bool Knows(string stem) => _known.Contains(stem) || Language.Numbers.IsNumber(stem);

    /// <summary>Whether a number right after the word can name a place.</summary>
    public bool IsPlaceNoun(string stem) => _placeNouns.Contains(stem);

    /// <summary>Whether a phrase means a condition of a check only because it praises whatever is spoken of.</summary>
    public bool IsGeneral(string phrase, int check) => _general.Contains((phrase, check));

    private void AddNames(CheckEntry check)
    {
        var spoken = check.Check.Spoken;
        foreach (var phrase in spoken.Subjects.Prepend(check.Check.ShortTitle).Prepend(check.Check.Title))
        {
            var stems = Language.Tokenizer.StemsOf(phrase);
            Names.Add(stems, new(check.Index, true));
            var content = stems.Where(stem => !Language.Small.Contains(stem)).ToArray();
            if (content.Length < stems.Length && content.Length > 1)
            {
                Names.Add(stems.Where(stem => !Language.Articles.Contains(stem)).ToArray(), new(check.Index, true));
            }

            foreach (var link in stems.Length == 2 ? Language.Links : [])
            {
                Names.Add([stems[1], .. link, stems[0]], new(check.Index, true));
            }
        }

        foreach (var phrase in check.Check.PlaceNoun is { } noun ? spoken.Parts.Append(noun) : spoken.Parts)
        {
            var stems = Language.Tokenizer.StemsOf(phrase);
            Names.Add(stems, new(check.Index, false));
            if (check.PerPlace)
            {
                _placeNouns.Add(stems[^1]);
            }
        }
    }

    private void AddPlaceNames(CheckEntry check)
    {
        foreach (var (name, index) in (check.Check.Places?.Names ?? []).Select((name, index) => (name, index)))
        {
            foreach (var phrase in name.Phrases.Prepend(name.Name))
            {
                PlaceNames.Add(Language.Tokenizer.StemsOf(phrase), index + 1);
            }
        }
    }

    private void AddConditions(CheckEntry check)
    {
        foreach (var (condition, index) in check.Check.Conditions.Select((condition, index) => (condition, index)))
        {
            foreach (var phrase in condition.Phrases.Prepend(condition.Id))
            {
                var stems = Language.Tokenizer.StemsOf(phrase);
                Conditions.Add(stems, new(check.Index, index));
                foreach (var variant in Language.Tied(stems))
                {
                    Conditions.Add(variant, new(check.Index, index));
                }
            }
        }
    }

    // A name of its own counts as the sheet's name of the same thing: where actions on a counted part are recorded on
    // the check, that is the part, else the first way to name the check.
    private void AddOwn(OwnWord word)
    {
        if (Checks.FirstOrDefault(check => check.Check.Id == word.Check) is not { } check)
        {
            return;
        }

        var stems = Language.Tokenizer.StemsOf(word.Phrase);
        if (word.Condition is { } condition)
        {
            var index = check.Check.Conditions.ToList().FindIndex(known => known.Id == condition);
            if (index >= 0)
            {
                Conditions.Add(stems, new(check.Index, index));
            }

            return;
        }

        var spoken = check.Check.Spoken;
        var name = check is { PerPlace: true, MainForActions: true } && spoken.Parts.Count > 0 ? spoken.Parts[0] : spoken.Subjects.Concat(spoken.Parts).First();
        foreach (var naming in Names.Find(Language.Tokenizer.StemsOf(name)).ToList())
        {
            Names.Add(stems, naming);
        }
    }

    private void AddPraise(CheckEntry check)
    {
        foreach (var praise in Language.Praise)
        {
            if (!Conditions.Find(praise).Any(known => known.Check == check.Index))
            {
                Conditions.Add(praise, new(check.Index, check.FirstGood));
            }

            _general.Add((string.Join(' ', praise), check.Index));
        }
    }
}
