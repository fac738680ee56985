using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Tells a year from a value: "in 1985", "since nineteen seventy two", "from two thousand and twelve".</summary>
internal static class Years
{
    /// <summary>How many tokens at a place say when something was, in years; 0 where they do not.</summary>
    public static int Length(IReadOnlyList<Token> tokens, int at)
    {
        if (tokens[at].Stem is "a" or "an" or "my" && at + 2 < tokens.Count && Figures(tokens, at + 1) is { } model)
        {
            // "A 1985 one".
            return tokens[model].Kind == TokenKind.Word && IsAlone(tokens, model) ? model - at : 0;
        }

        if (tokens[at].Stem is not ("in" or "since" or "from" or "of" or "by" or "until" or "around" or "about") || at + 1 >= tokens.Count)
        {
            return 0;
        }

        var next = Figures(tokens, at + 1) ?? Words(tokens, at + 1) ?? Thousand(tokens, at + 1);
        return next is { } after && (after >= tokens.Count || IsAlone(tokens, after)) ? after - at : 0;
    }

    private static int? Figures(IReadOnlyList<Token> tokens, int at) =>
        tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 4 } year && year.Text[..2] is "19" or "20" ? at + 1 : null;

    // "Nineteen seventy two", "twenty twelve".
    private static int? Words(IReadOnlyList<Token> tokens, int at)
    {
        if (tokens[at].Stem is not ("nineteen" or "twenty") || at + 1 >= tokens.Count)
        {
            return null;
        }

        return NumberWords.Teen(tokens[at + 1].Stem) is not null ? at + 2
            : NumberWords.Tens(tokens[at + 1].Stem) is null ? null
            : at + 2 < tokens.Count && NumberWords.Unit(tokens[at + 2].Stem) is not null ? at + 3
            : at + 2;
    }

    private static int? Thousand(IReadOnlyList<Token> tokens, int at) =>
        at + 3 < tokens.Count && tokens[at].IsWord("two") && tokens[at + 1].IsWord("thousand") && tokens[at + 2].IsWord("and")
        && (NumberWords.Unit(tokens[at + 3].Stem) ?? NumberWords.Teen(tokens[at + 3].Stem)) is not null ? at + 4 : null;

    // Nothing that goes on with the number: no unit, no further digits.
    private static bool IsAlone(IReadOnlyList<Token> tokens, int at) =>
        tokens[at].Kind != TokenKind.Digits && tokens[at].Stem is not ("ohm" or "k" or "kilohm" or "volt" or "thou" or "mm" or "degree" or "point" or "v");
}
