using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Finds runs of numbers and units that belong together: "four eight k", "one, three and six",
/// "two to six".</summary>
internal sealed class NumberRuns(IReadOnlyList<Token> tokens)
{
    private readonly NumberGrammar _numbers = new(tokens);
    private readonly UnitGrammar _units = new(tokens);

    /// <summary>The token after the run that starts at a token and ends before another; null where none starts.</summary>
    public int? At(int at, int limit)
    {
        if (NumberEnd(at, limit) is not { } end)
        {
            return null;
        }

        while (end < limit)
        {
            if (NumberEnd(end, limit) is { } direct)
            {
                end = direct;
            }
            else if (Joins(end, at) && NumberEnd(end + 1, limit) is { } joined)
            {
                end = joined;
            }
            else
            {
                break;
            }
        }

        return end;
    }

    private int? NumberEnd(int at, int limit)
    {
        if (at >= limit)
        {
            return null;
        }

        var end = 0;
        foreach (var reading in _numbers.At(at))
        {
            end = Math.Max(end, reading.Next);
        }

        if (end == 0 || end > limit)
        {
            return null;
        }

        return _units.At(end) is { } unit && unit.Next <= limit ? unit.Next : end;
    }

    private bool Joins(int at, int first) => tokens[at] switch
    {
        { Kind: TokenKind.Mark, Text: "-" } => true,
        { Kind: TokenKind.Mark, Text: "," } => IsSmall(at - 1) && at + 1 < tokens.Count && IsSmall(at + 1) && Alone(at + 1)
            && at - 1 >= first,
        { Stem: "and" or "or" or "to" or "through" or "thru" or "till" or "until" or "then" } => true,
        _ => false,
    };

    private bool IsSmall(int at) => tokens[at] switch
    {
        { Kind: TokenKind.Digits, Text.Length: 1 } => true,
        { Kind: TokenKind.Word } word => NumberWords.Unit(word.Stem) is not null,
        _ => false,
    };

    // Whether the number at a token is followed by none of its own: no point, no unit.
    private bool Alone(int at) =>
        at + 1 >= tokens.Count || _units.At(at + 1) is null && !NumberWords.IsPoint(tokens[at + 1].Stem)
        && !(tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true });
}
