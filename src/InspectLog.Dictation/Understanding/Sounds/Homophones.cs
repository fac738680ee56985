using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Words that sound exactly like one that says how a part is, where such a word is due: "spark's week on three".
/// </summary>
internal sealed class Homophones(CheckSheet sheet, Lexicon lexicon)
{
    private static readonly HashSet<string> Before = new(
        "is|are|was|were|'s|look|looks|very|quite|bit|rather|still|too|more|really|pretty|slightly|badly".Split('|'), StringComparer.Ordinal);

    private readonly Lazy<ILookup<string, string>> _bySound = new(() => sheet.Checks
        .SelectMany(check => check.Conditions).SelectMany(condition => condition.Phrases.Prepend(condition.Id))
        .Where(phrase => phrase.Length > 2 && phrase.All(char.IsAsciiLetterLower)).Distinct(StringComparer.Ordinal)
        .SelectMany(word => Sounds(word).Select(sound => (sound, word)))
        .ToLookup(one => one.sound, one => one.word, StringComparer.Ordinal));

    /// <summary>The text with such words taken for what they sound like.</summary>
    public TakenText In(TakenText text)
    {
        for (var at = 1; at < text.Tokens.Count; at++)
        {
            if (IsDue(text.Tokens, at) && Sounds(text.Tokens[at].Text).SelectMany(sound => _bySound.Value[sound]).FirstOrDefault() is { } word)
            {
                text = text.With(at, at + 1, word);
            }
        }

        return text;
    }

    // After the part, or after what ties something to it; after a number only at the end: "six week".
    private bool IsDue(IReadOnlyList<Token> tokens, int at) =>
        tokens[at].Kind == TokenKind.Word && lexicon.Match(tokens, at) is null
        && (Before.Contains(tokens[at - 1].Text) || lexicon.IsSubjectWord(tokens[at - 1].Stem)
            || tokens[at - 1].Kind == TokenKind.Digits && (at + 1 == tokens.Count || tokens[at + 1].Kind == TokenKind.Mark));

    private static IEnumerable<string> Sounds(string word) => Pronunciations.Of(word).Select(phones => string.Join(' ', phones));
}
