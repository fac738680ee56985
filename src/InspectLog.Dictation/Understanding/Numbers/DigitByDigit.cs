using System.Globalization;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Numbers said figure by figure: "nine five double oh", "one two point four", "oh eight five".</summary>
internal sealed class DigitByDigit(IReadOnlyList<Token> tokens, CardinalGrammar cardinals)
{
    private const int Most = 6;

    // Dearer than two numbers one after the other where both make sense.
    private const double Cost = 1;

    /// <summary>The ways to read figures that start at a token as one number.</summary>
    public IEnumerable<NumberReading> At(int at)
    {
        var (digits, next) = Digits(at);
        if (digits.Length < 2)
        {
            yield break;
        }

        var value = decimal.Parse(digits, CultureInfo.InvariantCulture);
        if (digits[0] == '0')
        {
            if (digits.Length > 2)
            {
                yield return new(next, decimal.Parse($"0.{digits[1..]}", CultureInfo.InvariantCulture), Cost / 2, false);
            }
        }
        else if (next < tokens.Count && NumberWords.IsPoint(tokens[next].Stem))
        {
            foreach (var fraction in cardinals.FractionDigits(next + 1))
            {
                yield return new(fraction.Next, value + fraction.Value, Cost, false);
            }
        }
        else if (digits[^1] == '0')
        {
            yield return new(next, value, Cost, true);
        }
    }

    private (string Digits, int Next) Digits(int at)
    {
        var digits = "";
        while (at < tokens.Count && digits.Length < Most)
        {
            var twice = tokens[at].IsWord("double") && at + 1 < tokens.Count;
            if (Digit(twice ? at + 1 : at) is not { } digit)
            {
                break;
            }

            digits += twice ? $"{digit}{digit}" : digit;
            at += twice ? 2 : 1;
        }

        return (digits, at);
    }

    private bool IsGlued(int at) => at < tokens.Count && tokens[at] is { Kind: TokenKind.Digits, Glued: true };

    private string? Digit(int at) => tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 } figure && !IsGlued(at + 1) ? figure.Text
        : tokens[at].Kind != TokenKind.Word ? null
        : NumberWords.IsZero(tokens[at].Stem) ? "0" : NumberWords.Unit(tokens[at].Stem)?.ToString(CultureInfo.InvariantCulture);
}
