using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <content>Halves and quarters.</content>
internal sealed partial class NumberGrammar
{
    // "Eleven and a half", "one and three quarters", "11 1/2".
    private void WithFraction(int next, int number, List<NumberReading> found)
    {
        var and = _words.IsAnd(Word(next));
        foreach (var (end, part, counted) in FractionsAt(and ? next + 1 : next))
        {
            if (and || counted)
            {
                Add(found, end, number + part, NumberForm.Fraction);
            }
        }
    }

    private void FractionAlone(int at, List<NumberReading> found)
    {
        foreach (var (end, part, _) in FractionsAt(at))
        {
            Add(found, end, part, NumberForm.Fraction);
        }
    }

    private IEnumerable<(int Next, double Part, bool Counted)> FractionsAt(int at)
    {
        if (IsFigure(at) && Word(at).Split('/') is [var above, var below])
        {
            yield return (at + 1, Parse(above) / Parse(below), true);
        }

        if (IsFigure(at) && at + 2 < tokens.Count && tokens[at + 1] is { Text: "/" } && tokens[at + 2] is { Kind: TokenKind.Figure }
            && Word(at) is "1" or "3" && Word(at + 2) is "2" or "4" or "8")
        {
            yield return (at + 3, Parse(Word(at)) / Parse(Word(at + 2)), true);
        }

        if (_words.Fraction(Word(at)) is { } bare)
        {
            yield return (at + 1, bare, false);
        }

        if (at + 1 < tokens.Count && _words.Fraction(Word(at + 1)) is { } part)
        {
            if (_words.IsOne(Word(at)))
            {
                yield return (at + 2, part, true);
            }
            else if (_cardinals.Digit(at) is > 0 and < 8 and var count)
            {
                yield return (at + 2, count * part, true);
            }
        }
    }
}
