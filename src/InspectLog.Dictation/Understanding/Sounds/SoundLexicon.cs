using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A phrase the reader knows, with how it sounds.</summary>
/// <param name="Text">The phrase.</param>
/// <param name="Tokens">Its words.</param>
/// <param name="Sounds">The ways it may be said.</param>
/// <param name="Number">Whether it is part of a number or its unit.</param>
internal sealed record SoundingPhrase(string Text, IReadOnlyList<Token> Tokens, IReadOnlyList<Phone[]> Sounds, bool Number);

/// <summary>A phrase that sounds like what was heard.</summary>
/// <param name="Phrase">The phrase.</param>
/// <param name="Cost">How far it is, per sound; 0 for the same sounds.</param>
internal readonly record struct SoundMatch(SoundingPhrase Phrase, double Cost);

/// <summary>The phrases of one sheet by their sound: names, conditions, actions, numbers and units. The small words
/// of everyday speech are not among them: what is said with those alone is no finding.</summary>
internal sealed class SoundLexicon
{
    private const int MostMatches = 5;
    private const int MostVariants = 3;

    private static readonly string[] NumbersAndUnits =
    [
        .. NumberWords.Spoken, "point", "hundred", "thousand", "ohms", "kilohms", "volts", "thou", "millimetres", "degrees",
        "before top dead centre", "after top dead centre",
    ];

    private readonly SoundIndex _numbers;
    private readonly SoundIndex _phrases;

    public SoundLexicon(CheckSheet sheet)
    {
        SoundingPhrase[] numbers = [.. NumbersAndUnits.Select(phrase => Sounding(phrase, number: true))];
        var phrases = sheet.Checks.SelectMany(PhrasesOf).Concat(ActionWords.All.Select(action => action.Phrase))
            .Except(NumbersAndUnits, StringComparer.OrdinalIgnoreCase)
            .Select(phrase => Sounding(phrase, number: false));
        _numbers = new(numbers);
        _phrases = new(phrases.Concat(numbers));
    }

    /// <summary>The phrases that sound like a run of words, the nearest first.</summary>
    /// <param name="heard">The words.</param>
    /// <param name="strictness">A factor on the greatest distance that counts.</param>
    /// <param name="numbersOnly">Whether only numbers and units are looked for.</param>
    public IReadOnlyList<SoundMatch> Near(IReadOnlyList<Token> heard, double strictness, bool numbersOnly)
    {
        var stems = heard.Select(token => token.Stem).ToList();
        return [.. (numbersOnly ? _numbers : _phrases).Near(Variants(heard), strictness)
            .Where(match => !match.Phrase.Tokens.Select(token => token.Stem).SequenceEqual(stems))
            .OrderBy(match => match.Cost).ThenBy(match => match.Phrase.Text, StringComparer.Ordinal).Take(MostMatches)];
    }

    private static IEnumerable<string> PhrasesOf(Check check) => check.Spoken.Subjects
        .Concat(check.Spoken.Parts)
        .Concat(check.Conditions.SelectMany(condition => condition.Phrases.Prepend(condition.Id)));

    private static SoundingPhrase Sounding(string phrase, bool number)
    {
        var tokens = Tokenizer.Cut(phrase).Where(token => token.Kind == TokenKind.Word).ToList();
        return new(phrase, tokens, Variants(tokens), number);
    }

    private static IReadOnlyList<Phone[]> Variants(IReadOnlyList<Token> words)
    {
        IReadOnlyList<Phone[]> runs = [[]];
        foreach (var word in words)
        {
            var said = Pronunciations.Of(word.Text);
            if (said.Count == 0)
            {
                return [];
            }

            runs = [.. runs.SelectMany(run => said.Select(phones => run.Concat(phones).ToArray())).Take(MostVariants)];
        }

        return runs;
    }
}
