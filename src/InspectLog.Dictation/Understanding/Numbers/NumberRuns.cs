using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Finds runs of numbers and units that belong together: "four eight k", "one, three and six",
/// "two to six".</summary>
internal sealed class NumberRuns(NumberLookup numbers)
{
    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;

    /// <summary>The token after the run that starts at a token and ends before another; null where none starts. The
    /// run goes as far as any way to read its numbers reaches: "three thirteen thousand" is one run, though 3.13 ends
    /// in the middle of it.</summary>
    public int? At(int at, int limit)
    {
        var reached = new SortedSet<int>(NumberEnds(at, limit));
        if (reached.Count == 0)
        {
            return null;
        }

        var end = reached.Max;
        while (reached.Count > 0)
        {
            var from = reached.Min;
            reached.Remove(from);
            end = Math.Max(end, from);
            if (from < limit && IsPronoun(from, at))
            {
                continue;
            }

            reached.UnionWith(NumberEnds(from, limit));
            if (from < limit && Joins(from, at))
            {
                reached.UnionWith(NumberEnds(from + 1, limit));
            }
        }

        return end;
    }

    /// <summary>Whether a unit starts at a token.</summary>
    public bool IsUnit(int at) => numbers.Unit(at) is not null;

    private IEnumerable<int> NumberEnds(int at, int limit)
    {
        if (at >= limit)
        {
            yield break;
        }

        foreach (var reading in numbers.Numbers(at).Where(reading => reading.Next <= limit))
        {
            yield return reading.Next;
            if (numbers.Unit(reading.Next) is { } unit && unit.Next <= limit)
            {
                yield return unit.Next;
            }
        }
    }

    private bool Joins(int at, int first) => _tokens[at] switch
    {
        { Kind: TokenKind.Mark, Text: "-" } => true,
        { Kind: TokenKind.Mark, Text: "," } => IsSmall(at - 1) && at + 1 < _tokens.Count && IsSmall(at + 1) && Alone(at + 1)
            && at - 1 >= first,
        { Stem: "and" or "or" or "to" or "through" or "thru" or "till" or "until" or "then" } => true,
        _ => false,
    };

    // "A thirteen thou one jams": the feeler of that size.
    private bool IsPronoun(int at, int first) =>
        _tokens[at].IsWord("one") && first > 0 && _tokens[first - 1].Stem is "a" or "an" or "the" or "my" && numbers.Unit(at - 1) is not null;

    private bool IsSmall(int at) => _tokens[at] switch
    {
        { Kind: TokenKind.Digits, Text.Length: 1 } => true,
        { Kind: TokenKind.Word } word => NumberWords.Unit(word.Stem) is not null,
        _ => false,
    };

    // Whether the number at a token is followed by none of its own: no point, no unit, no more figures.
    private bool Alone(int at) =>
        at + 1 >= _tokens.Count || numbers.Unit(at + 1) is null && !NumberWords.IsPoint(_tokens[at + 1].Stem)
        && numbers.Numbers(at + 1).Count == 0
        && !(_tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true });
}
