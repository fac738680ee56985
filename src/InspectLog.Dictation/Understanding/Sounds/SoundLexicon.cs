using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A phrase the reader knows, with how it sounds.</summary>
/// <param name="Text">The phrase.</param>
/// <param name="Stems">Its stems.</param>
/// <param name="Sounds">The ways it may be said.</param>
internal sealed record SoundingPhrase(string Text, IReadOnlyList<string> Stems, IReadOnlyList<Phone[]> Sounds);

/// <summary>A phrase that sounds like what was heard.</summary>
/// <param name="Phrase">The phrase.</param>
/// <param name="Cost">How far it is, per sound; 0 for the same sounds.</param>
internal readonly record struct SoundMatch(SoundingPhrase Phrase, double Cost);

/// <summary>The phrases of one sheet, and of what can be done, by their sound. The small words of everyday speech are not among
/// them: what is said with those alone is no finding.</summary>
internal sealed class SoundLexicon
{
    private const int MostVariants = 3;

    private readonly SoundIndex _phrases;

    public SoundLexicon(SheetLexicon lexicon)
    {
        var phrases = lexicon.Sheet.Checks.SelectMany(check => check.Spoken.Subjects.Concat(check.Spoken.Parts).Concat(check.Conditions.SelectMany(condition => condition.Phrases.Prepend(condition.Id))));
        _phrases = new(phrases.Distinct(StringComparer.OrdinalIgnoreCase).Select(phrase =>
        {
            var tokens = lexicon.Language.Tokenizer.Cut(phrase);
            return new SoundingPhrase(phrase, [.. tokens.Select(token => token.Stem)], Variants(tokens));
        }));
    }

    /// <summary>The phrase that sounds most like a run of words; null where none comes near.</summary>
    public SoundMatch? Nearest(IReadOnlyList<Token> heard)
    {
        SoundMatch? nearest = null;
        foreach (var match in _phrases.Near(Variants(heard), strictness: 1))
        {
            if (nearest is not { } known || match.Cost < known.Cost || match.Cost == known.Cost && string.CompareOrdinal(match.Phrase.Text, known.Phrase.Text) < 0)
            {
                nearest = match;
            }
        }

        return nearest;
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
