using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Reads numbers as people say them ("one and a half", "twelve point oh four", "thirty-two") and as Whisper
/// writes them ("11 and 3/4", ".3", "9,850"). Where there is more than one way to read a number it gives them all;
/// which one was meant is for those to say who know what is measured.</summary>
internal sealed class NumberGrammar(IReadOnlyList<Token> tokens)
{
    /// <summary>Cost of taking apart what Whisper wrote as one number: "6.8" for "six: point eight".</summary>
    public const double SplitCost = 3;

    private readonly CardinalGrammar _cardinals = new(tokens);
    private readonly DigitGrammar _digits = new(tokens);
    private readonly FractionGrammar _fractions = new(tokens);
    private readonly DigitByDigit _figures = new(tokens, new(tokens));

    /// <summary>The ways to read a number that starts at a token, likeliest first; none where no number starts.</summary>
    public IReadOnlyList<NumberReading> At(int at)
    {
        var readings = new List<NumberReading>();
        if (at >= tokens.Count)
        {
            return readings;
        }

        if (UnitGrammar.TopDeadCentre(tokens, at) is > 0 and var length)
        {
            readings.Add(new(at + length, 0, 0, false));
        }
        else if (IsSign(at) is { } sign && at + 1 < tokens.Count)
        {
            readings.AddRange(Magnitudes(at + 1).Select(reading => reading with
            {
                Value = sign * reading.Value,
                Whole = false,
            }));
        }
        else
        {
            readings.AddRange(Magnitudes(at));
        }

        return readings;
    }

    private bool FullUnit(int at) => at + 2 < tokens.Count && tokens[at].Stem is "a" or "one" && tokens[at + 1].Stem is "full" or "whole" or "clear"
        && tokens[at + 2].Stem is "millimeter" or "ohm" or "volt" or "degree" or "mm" or "kilohm";

    private int? IsSign(int at) => tokens[at] switch
    {
        { Kind: TokenKind.Mark, Text: "−" } => -1,
        { Stem: "minus" or "negative" } => -1,
        { Stem: "plus" } when at + 1 < tokens.Count && tokens[at + 1].Kind == TokenKind.Digits => 1,
        _ => null,
    };

    private IEnumerable<NumberReading> Magnitudes(int at)
    {
        foreach (var written in _digits.At(at))
        {
            yield return written;
            foreach (var longer in Continued(written, at))
            {
                yield return longer;
            }
        }

        if (tokens[at].Kind == TokenKind.Digits)
        {
            // "9 tenths", "3 quarters".
            foreach (var fraction in _fractions.At(at, afterAnd: false).Concat(_figures.At(at)))
            {
                yield return fraction;
            }

            yield break;
        }

        if (_cardinals.At(at) is { } cardinal)
        {
            yield return cardinal;
            foreach (var longer in Continued(cardinal, at))
            {
                yield return longer;
            }
        }

        if (FullUnit(at))
        {
            // "A full millimetre".
            yield return new(at + 2, 1, 0, false);
        }

        foreach (var bare in Decimals(0, at, 0).Concat(_fractions.At(at, afterAnd: false)).Concat(_figures.At(at)))
        {
            yield return bare;
        }
    }

    private List<NumberReading> Continued(NumberReading start, int at)
    {
        if (!start.Whole)
        {
            return _cardinals.Multiplied(start) is { } multiplied ? [multiplied] : [];
        }

        var written = tokens[at].Kind == TokenKind.Digits;
        var longer = new List<NumberReading>();
        if (written && _cardinals.Multiplied(start) is { } thousands)
        {
            longer.Add(thousands);
        }

        longer.AddRange(Decimals(start.Value, start.Next, start.Cost));
        longer.AddRange(_fractions.Mixed(start));
        longer.AddRange(PointLeftOut(start));
        return longer;
    }

    // "nine point seven five": each further digit is a longer reading.
    private IEnumerable<NumberReading> Decimals(decimal whole, int at, double cost)
    {
        if (at >= tokens.Count || !NumberWords.IsPoint(tokens[at].Stem))
        {
            return [];
        }

        var fractions = _cardinals.FractionDigits(at + 1);
        return fractions.Select((fraction, i) => new NumberReading(
            fraction.Next, whole + fraction.Value, cost + 0.5 * i, false));
    }

    // "twelve two" for 12.2, "one twenty" for 120 or 1.20. Which it was depends on what is measured.
    private IEnumerable<NumberReading> PointLeftOut(NumberReading start)
    {
        if (start.Value is < 1 or > 99 || start.Next >= tokens.Count || tokens[start.Next].Lead != '\0')
        {
            yield break;
        }

        var apart = tokens[start.Next].Kind == TokenKind.Digits ? "the figures were written apart" : null;
        foreach (var fraction in _cardinals.FractionDigits(start.Next))
        {
            var cost = start.Cost + (start.Value >= 10 ? 0.4 : 1.2);
            yield return new(fraction.Next, start.Value + fraction.Value, cost, false, apart);
            if (fraction.Value is >= 0.10m and < 1 && decimal.Round(fraction.Value, 2) == fraction.Value
                && fraction.TwoDigits)
            {
                yield return new(fraction.Next, start.Value * 100 + fraction.Value * 100, cost + 0.3, false, apart);
            }
        }
    }
}
