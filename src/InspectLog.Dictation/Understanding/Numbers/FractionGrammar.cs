using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Reads fractions, by themselves and after a whole number.</summary>
internal sealed class FractionGrammar(IReadOnlyList<Token> tokens)
{
    private readonly CardinalGrammar _cardinals = new(tokens);
    private readonly DigitGrammar _digits = new(tokens);

    /// <summary>A whole number and what is added to it: "eleven and three quarters", "11 and 3/4", "11 3/4", "seven and a
    /// half".</summary>
    public IEnumerable<NumberReading> Mixed(NumberReading whole)
    {
        var at = whole.Next;
        if (at < tokens.Count && tokens[at].IsWord("and"))
        {
            at++;
        }
        else if (at >= tokens.Count || tokens[at].Kind != TokenKind.Digits)
        {
            return [];
        }

        return At(at, afterAnd: true).Concat(PointForSlash(at)).Concat(_digits.At(at).Where(part => part.Value < 1 && !part.Whole && IsSlash(at)))
            .Where(part => part.Value < 1)
            .Select(part => part with { Value = whole.Value + part.Value, Cost = whole.Cost, Doubt = part.Doubt ?? whole.Doubt });
    }

    // "Nine and 3.4 k" was nine and three quarters.
    private IEnumerable<NumberReading> PointForSlash(int at)
    {
        if (at + 1 < tokens.Count && tokens[at - 1].IsWord("and") && tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 } over
            && tokens[at + 1] is { Kind: TokenKind.Digits, Lead: '.', Glued: true, Text: "2" or "4" } under && over.Text[0] < under.Text[0])
        {
            yield return new(at + 2, (over.Text[0] - '0') / (decimal)(under.Text[0] - '0'), 0, false, $"{over.Text}.{under.Text} may be {over.Text}/{under.Text}");
        }
    }

    private bool IsSlash(int at) => at + 1 < tokens.Count && tokens[at + 1].Lead == '/';

    /// <summary>A fraction by itself: "a half", "three quarters", "half a", "five sixteenths", "three tenths of a".</summary>
    /// <param name="at">Its first token.</param>
    /// <param name="afterAnd">Whether it is added to a whole number.</param>
    public IEnumerable<NumberReading> At(int at, bool afterAnd)
    {
        if (at >= tokens.Count)
        {
            yield break;
        }

        var count = 1m;
        var next = at;
        if (_cardinals.At(at) is { } numerator)
        {
            (count, next) = (numerator.Value, numerator.Next);
        }
        else if (tokens[at].Stem is "a" or "an")
        {
            next++;
        }

        if (next >= tokens.Count || NumberWords.Denominator(tokens[next].Stem) is not { } denominator)
        {
            yield break;
        }

        // "Half a millimetre" and "one and half", but not "half the leads".
        var after = AfterOfA(next + 1);
        if (next == at && !afterAnd && after == next + 1)
        {
            yield break;
        }

        // "Two and five half" is no seven halves: nobody says a fraction above one so.
        if (count < denominator)
        {
            yield return new(after, count / denominator, 0, false);
        }
    }

    // "A quarter of the millimetre", but not "half of the plugs".
    private bool IsUnit(int at) => at < tokens.Count && tokens[at].Stem is "millimeter" or "mm" or "inch" or "ohm" or "volt" or "thou" or "degree";

    private int AfterOfA(int at)
    {
        var next = at < tokens.Count && tokens[at].IsWord("of") ? at + 1 : at;
        return next < tokens.Count && (tokens[next].Stem is "a" or "an" || next > at && tokens[next].IsWord("the") && IsUnit(next + 1)) ? next + 1 : at;
    }
}
