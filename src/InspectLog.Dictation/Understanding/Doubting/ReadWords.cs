using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>The words of a text with what they were taken for: which are strange, and what small words around them tell.
/// </summary>
internal sealed class ReadWords(IReadOnlyList<Token> tokens, TextReading reading)
{
    // Words of all talk that say nothing of how something is.
    private static readonly HashSet<string> Everyday = new(
        ("came|come|comes|went|going|call|called|sees|back|one|ones|put|time|side|end|way|place|car|again|me|us|him|so|by|if|as|than|"
        + "twice|somewhere|nope|total|old|static|fitted|refitted|clipped|cranks|tight|second|between").Split('|'), StringComparer.Ordinal);

    public IReadOnlyList<Token> Tokens => tokens;

    public TextReading Reading => reading;

    public NumberLookup Numbers { get; } = new(tokens);

    /// <summary>Whether a token was taken for something.</summary>
    public bool Is(int at, WordReading kind) => reading.Words[at] == kind;

    /// <summary>Whether nobody told the program about a word, and it is not of all talk.</summary>
    public bool IsStrange(int at) =>
        Is(at, WordReading.Unknown) && tokens[at].Kind == TokenKind.Word && tokens[at].Text.Length > 1
            && !Everyday.Contains(tokens[at].Text) && !tokens[at].Text.EndsWith("ly", StringComparison.Ordinal)
            && !SaysWhere(at) && Numbers.Unit(at) is not { Foreign: false, Doubt: null }
        || tokens[at].Text is "we" && at > 0 && (Is(at - 1, WordReading.Name) || tokens[at - 1].Stem is "is" or "'s");

    // "Near the manifold", "with the strobe", "like a watch". But in "the blade on the bandsaw is" it says which blade.
    private bool SaysWhere(int at) => !ProperNames.At(tokens, at) && (at > 1 && (tokens[at - 1].Text is "like" || at > 2 && tokens[at - 2].Text is "like" && tokens[at - 1].Text is "a" or "the")
        || tokens[at].Text is "like" && at + 1 < tokens.Count && tokens[at + 1].Text is "a" or "the"
        || at > 1 && !(at > 2 && at + 1 < tokens.Count && Is(at - 3, WordReading.Name) && Is(at + 1, WordReading.Tie)) && tokens[at - 1].Text is "the" or "a" && Is(at - 2, WordReading.Small)
        && tokens[at - 2].Text is "near" or "on" or "at" or "by" or "with" or "in" or "against" or "under" or "behind" or "from");

    /// <summary>"On the bracket", "with a wire brush". But in "the gap at the door is" it tells which gap.</summary>
    public bool IsTied(int at)
    {
        var before = at - 1;
        while (before >= 0 && (tokens[before].Text is "the" or "a" or "an" || Is(before, WordReading.Aside)))
        {
            before--;
        }

        var tells = before > 0 && Is(before - 1, WordReading.Name) && at + 1 < tokens.Count && Is(at + 1, WordReading.Tie);
        return !tells && before >= 0 && Is(before, WordReading.Small) && tokens[before].Text is "near" or "on" or "at" or "by" or "with" or "in" or "against" or "under" or "behind" or "from" or "into" or "of";
    }

    /// <summary>The first token of the sentence of a token.</summary>
    public int SentenceStart(int at)
    {
        while (at > 0 && !tokens[at - 1].EndsSentence)
        {
            at--;
        }

        return at;
    }

    /// <summary>The token that ends the sentence of a token.</summary>
    public int SentenceEnd(int at)
    {
        while (at < tokens.Count && !tokens[at].EndsSentence)
        {
            at++;
        }

        return at;
    }
}
