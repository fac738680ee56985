using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Figures that a speech model wrote for small words which sound the same: "the pickup 2 reluctor gap",
/// "lead 4 cylinder 5", "the new 1 is 6.5 k". Only where the figure can be no number.</summary>
internal sealed class FiguresForWords(Lexicon lexicon)
{
    private static readonly HashSet<string> WhichOne = new(
        "new|old|other|original|replacement|spare|second-hand".Split('|'), StringComparer.Ordinal);

    private static readonly HashSet<string> Links = new("is|was|are|were|'s|way|far|bit|look|much".Split('|'), StringComparer.Ordinal);

    private static readonly HashSet<string> Sizes = new(
        "wide|big|large|small|narrow|tight|close|far|long|short|high|low|late|early|much|weak|loose".Split('|'), StringComparer.Ordinal);

    /// <summary>The text with such figures taken for the words.</summary>
    public TakenText In(TakenText text)
    {
        for (var at = 1; at < text.Tokens.Count; at++)
        {
            if (Word(text.Tokens, at) is { } word)
            {
                text = text.With(word == "before" ? at - 1 : at, at + 1, word);
            }
        }

        return text;
    }

    private string? Word(IReadOnlyList<Token> tokens, int at) =>
        tokens[at] is not { Kind: TokenKind.Digits, Lead: '\0' } || at + 1 < tokens.Count && tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true }
            ? null
            : tokens[at].Text switch
            {
                "1" when IsOne(tokens, at) => "one",
                "10" when IsTan(tokens, at) => "tan",
                _ when at + 1 == tokens.Count => null,
                "2" => IsTo(tokens, at) ? "to" : IsTooth(tokens, at) ? "tooth" : IsToo(tokens, at) ? "too" : null,
                "4" => IsFor(tokens, at) ? "for" : IsFore(tokens, at) ? "before" : null,
                _ => null,
            };

    // "A new 1 in six", "the old 1 was".
    private static bool IsOne(IReadOnlyList<Token> tokens, int at) => WhichOne.Contains(tokens[at - 1].Text);

    // "The pickup 2 reluctor gap": no part that is counted by cylinder.
    private bool IsTo(IReadOnlyList<Token> tokens, int at) =>
        IsNameOfOne(tokens[at - 1].Stem) && IsNameOfOne(tokens[at + 1].Stem);

    // "The gap at the reluctor 2, 0.34 mm".
    private bool IsTooth(IReadOnlyList<Token> tokens, int at) =>
        IsNameOfOne(tokens[at - 1].Stem) && at > 1 && tokens[at - 2].IsWord("the")
        && (tokens[at + 1].IsMark(',') || tokens[at + 1].Stem is "is" or "'s" or "was");

    private bool IsNameOfOne(string stem) => lexicon.IsSubjectWord(stem) && !lexicon.IsOfCylinders(stem);

    // "It's 2 wide", "way 2 big".
    private static bool IsToo(IReadOnlyList<Token> tokens, int at) => Links.Contains(tokens[at - 1].Stem) && Sizes.Contains(tokens[at + 1].Text);

    // "Lead 4 cylinder 5", "the gap 4 plug 2", "the total 4 coil and ballast".
    private bool IsFor(IReadOnlyList<Token> tokens, int at) =>
        lexicon.IsSubjectWord(tokens[at - 1].Stem) && at + 2 < tokens.Count && tokens[at + 2].Kind == TokenKind.Digits
            && (tokens[at + 1].Stem is "cylinder" or "number" || lexicon.IsPlaceNoun(tokens[at + 1].Stem) && !lexicon.IsPlaceNoun(tokens[at - 1].Stem))
        || tokens[at - 1].Text is "total" or "reading" or "value" or "figure" && lexicon.IsSubjectWord(tokens[at + 1].Stem);

    // "Plugs one to six, all 10": said of plugs, where no value and no number of a plug can stand.
    private static bool IsTan(IReadOnlyList<Token> tokens, int at)
    {
        var sentence = tokens.Take(at).Reverse().TakeWhile(token => !token.IsMark('.')).ToList();
        var due = tokens[at - 1].Stem is "all" or "rest" or "nice" or "both" || tokens[at - 1].IsWord("and") && at > 1 && tokens[at - 2].Kind == TokenKind.Word || tokens[at - 1].Kind == TokenKind.Digits
            || tokens[at - 1].IsMark(',') && at > 1 && tokens[at - 2].Kind == TokenKind.Digits;
        return due && (at + 1 == tokens.Count || tokens[at + 1].Kind == TokenKind.Mark && !tokens[at + 1].IsMark('-'))
            && sentence.Exists(token => token.IsWord("plug"))
            && !sentence.Exists(token => token.Stem is "gap" or "thou" or "mm" or "millimeter");
    }

    // "7 degrees by 4".
    private static bool IsFore(IReadOnlyList<Token> tokens, int at) =>
        at > 1 && tokens[at - 1].IsWord("by") && (tokens[at - 2].Kind == TokenKind.Digits || tokens[at - 2].Stem is "degree" or "°");
}
