using System.Globalization;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding;

/// <summary>Tells which phrases a workshop can add to the words of a sheet. Each must hold a word that nothing else
/// uses, so that no text that was understood before is read otherwise after it.</summary>
public sealed class OwnVocabulary
{
    /// <summary>The most characters of a phrase.</summary>
    public const int LongestPhrase = 60;

    /// <summary>The most words of a phrase.</summary>
    public const int MostWords = 5;

    private readonly CheckSheet _sheet;
    private readonly IReadOnlyList<OwnWord> _known;
    private readonly SheetLexicon _lexicon;
    private readonly Lazy<SheetLexicon> _withKnown;

    /// <summary>The vocabulary of a sheet with a workshop's own words.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="known">The own words that stand already.</param>
    public OwnVocabulary(CheckSheet sheet, IReadOnlyList<OwnWord> known)
    {
        (_sheet, _known, _lexicon) = (sheet, known, new(sheet, [], SpokenLanguage.English));
        _withKnown = new(() => new(sheet, known, SpokenLanguage.English));
    }

    /// <summary>A phrase as it is kept: without spaces around it, one space between words.</summary>
    public static string Tidy(string phrase) =>
        string.Join(' ', phrase.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Why a word cannot be added, and what to do; null where it can.</summary>
    /// <param name="word">The word, its phrase as <see cref="Tidy"/> gives it. Its check has to be of the sheet, its
    /// condition one of that check.</param>
    public string? Problem(OwnWord word) => Shape(word.Phrase) ?? Meaning(Cut(word.Phrase), word);

    /// <summary>The longest run of words in a text that neither the sheet, nor everyday speech, nor an own word
    /// explains, as it stands there; empty where everything is known. At most <see cref="MostWords"/> words.</summary>
    public string UnknownIn(string text)
    {
        var tokens = Cut(text);
        var lexicon = _withKnown.Value;
        var (best, run) = ((First: 0, Next: 0), (First: 0, Next: 0));
        for (var at = 0; at < tokens.Count;)
        {
            var known = Math.Max(lexicon.Names.Longest(tokens, at)?.Length ?? 0, lexicon.Conditions.Longest(tokens, at)?.Length ?? 0);
            if (known > 0 || IsKnown(tokens[at]))
            {
                at += Math.Max(1, known);
                continue;
            }

            run = run.Next == at && run.Next - run.First < MostWords ? (run.First, at + 1) : (at, at + 1);
            best = run.Next - run.First > best.Next - best.First ? run : best;
            at++;
        }

        return best.Next == 0 ? "" : text[tokens[best.First].Start..tokens[best.Next - 1].End];
    }

    private static IReadOnlyList<Token> Cut(string text) => SpokenLanguage.English.Tokenizer.Cut(text);

    private static string? Shape(string phrase)
    {
        if (phrase.Length == 0)
        {
            return "Type the word or words you say, such as sparkler.";
        }

        if (phrase.Length > LongestPhrase)
        {
            return $"Keep it to {LongestPhrase} characters.";
        }

        if (phrase.Any(char.IsDigit))
        {
            return "Leave figures out: they are read as cylinders or values. Use letters only.";
        }

        if (!phrase.All(letter => char.IsLetter(letter) || letter is ' ' or '-') || !phrase.Any(char.IsLetter))
        {
            return "Use letters, spaces and hyphens only.";
        }

        return Cut(phrase).Count > MostWords ? $"Keep it to {MostWords} words." : null;
    }

    private string? Meaning(IReadOnlyList<Token> tokens, OwnWord word)
    {
        if (Clash(word) is { } clash)
        {
            return clash;
        }

        if (Covers(_lexicon.Names.Longest(tokens, 0)?.Length) || Covers(_lexicon.Conditions.Longest(tokens, 0)?.Length)
            || Covers(SpokenLanguage.English.Actions.Longest(tokens, 0)?.Length))
        {
            return $"The check sheet already knows “{word.Phrase}”. Choose words that it does not know.";
        }

        if (tokens.All(IsNumber))
        {
            return "Numbers and units cannot be given another meaning. Add a word of your own.";
        }

        if (tokens.All(token => IsNumber(token) || IsEveryday(token)))
        {
            return "These are everyday words, which occur in any sentence. Add a word of your own.";
        }

        return tokens.All(IsKnown)
            ? "All these words already have a meaning on the check sheet. Add a word that it does not know."
            : null;

        bool Covers(int? length) => length == tokens.Count;
    }

    // One phrase can mean a condition of several checks: cooked, of a lead and of a plug. Any other second meaning
    // would have to be guessed at.
    private string? Clash(OwnWord word)
    {
        var same = _known.Where(known => Stems(known).SequenceEqual(Stems(word))).ToList();
        if (same.Exists(known => known.Check == word.Check && known.Condition == word.Condition))
        {
            return $"You have “{word.Phrase}” already, with this meaning.";
        }

        return same.Find(known => known.Check == word.Check || known.Condition is null || word.Condition is null) is { } other
            ? $"“{word.Phrase}” already stands for {Words(other)}. Remove that first, or choose other words."
            : null;
    }

    private string Words(OwnWord word) => string.Create(
        CultureInfo.InvariantCulture,
        $"{_sheet.Find(word.Check)?.Title ?? word.Check}{(word.Condition is { } condition ? $": {condition}" : "")}");

    private static string[] Stems(OwnWord word) => SpokenLanguage.English.Tokenizer.StemsOf(word.Phrase);

    private bool IsKnown(Token token) => token.Kind != TokenKind.Word || IsNumber(token) || IsEveryday(token) || _lexicon.Knows(token.Stem) || _lexicon.Knows(token.Text);

    private static bool IsEveryday(Token token)
    {
        var language = SpokenLanguage.English;
        return language.Small.Contains(token.Text) || language.Places.Join.Contains(token.Text) || language.Places.Noun.Contains(token.Stem)
            || language.Roles.Longest([token], 0) is not null || language.Quantifiers.Longest([token], 0) is not null;
    }

    private static bool IsNumber(Token token)
    {
        var language = SpokenLanguage.English;
        return token.Kind == TokenKind.Figure || language.Numbers.IsNumber(token.Text) || language.Numbers.IsPoint(token.Text)
            || language.Units.At([token], 0) is { Meanings: [{ Unit: not null }, ..] };
    }
}
