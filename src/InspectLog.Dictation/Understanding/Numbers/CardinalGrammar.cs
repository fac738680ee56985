using System.Globalization;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Whole numbers and the digits after a point, in words or in a mixture of words and digits.</summary>
internal sealed class CardinalGrammar(IReadOnlyList<Token> tokens)
{
    /// <summary>Digits after a point.</summary>
    public readonly record struct Fraction(int Next, decimal Value, bool TwoDigits);

    private const int MostFractionDigits = 4;

    /// <summary>The longest whole number in words that starts at a token, or nothing.</summary>
    public NumberReading? At(int at)
    {
        var zero = at < tokens.Count && tokens[at].Kind == TokenKind.Word && NumberWords.IsZero(tokens[at].Stem);
        if (zero)
        {
            return PlainZero(at) ? new(at + 1, 0, 0, true) : null;
        }

        var start = BelowHundred(at) ?? Article(at);
        return start is { } value ? Multiplied(value) ?? (IsArticle(at) ? null : value) : null;
    }

    /// <summary>The number times the "hundred" or "thousand" that follows it, with what is added to that; or nothing
    /// where none follows.</summary>
    public NumberReading? Multiplied(NumberReading start)
    {
        var total = start;
        var taken = false;
        if (total.Next < tokens.Count && tokens[total.Next].IsWord("hundred"))
        {
            total = Plus(total with { Value = total.Value * 100, Next = total.Next + 1 }, BelowHundred);
            taken = true;
        }

        if (total.Next < tokens.Count && tokens[total.Next].IsWord("thousand") && total.Value < 1_000_000)
        {
            total = Plus(total with { Value = total.Value * 1000, Next = total.Next + 1 }, BelowThousand);
            taken = true;
        }

        return taken ? total with { Whole = total.Value == decimal.Truncate(total.Value) } : null;
    }

    /// <summary>The ways to read digits after a point, longest first: "seven five", "oh four", "thirty-five",
    /// "28".</summary>
    public IReadOnlyList<Fraction> FractionDigits(int at)
    {
        var readings = new List<Fraction>();
        var digits = "";
        while (at < tokens.Count && digits.Length < MostFractionDigits && Digit(ref at) is { } more)
        {
            // "Point two twelve point two", "one point four one point five": the next number begins.
            var begins = at < tokens.Count && NumberWords.IsPoint(tokens[at].Stem);
            if (digits.Length > 0 && (begins || more.Length > 1 && digits.Any(digit => digit != '0')))
            {
                break;
            }

            digits += more;
            readings.Insert(0, new(at, Decimal("0." + digits), digits.Length == 2 && more.Length == 2));
            if (more.Length > 1)
            {
                break;
            }
        }

        return readings;
    }

    // "Oh" alone is an exclamation; it is a number only before a point or as a digit after one.
    private bool PlainZero(int at) =>
        tokens[at].Stem is "zero" or "nought" or "naught"
        || at + 1 < tokens.Count && NumberWords.IsPoint(tokens[at + 1].Stem);

    private string? Digit(ref int at)
    {
        var token = tokens[at];
        if (token.Kind == TokenKind.Digits)
        {
            at += token.Lead == '\0' ? 1 : 0;
            return token.Lead == '\0' && token.Text.Length <= MostFractionDigits ? token.Text : null;
        }

        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        if (token.Stem == "double" && at + 1 < tokens.Count && Single(tokens[at + 1].Stem) is { } twice)
        {
            at += 2;
            return twice + twice;
        }

        if (BelowHundred(at) is { Value: >= 10 } pair)
        {
            at = pair.Next;
            return pair.Value.ToString(CultureInfo.InvariantCulture);
        }

        if (Single(token.Stem) is not { } digit)
        {
            return null;
        }

        at++;
        return digit;
    }

    private static string? Single(string stem) =>
        NumberWords.IsZero(stem) ? "0" : NumberWords.Unit(stem)?.ToString(CultureInfo.InvariantCulture);

    private NumberReading Plus(NumberReading start, Func<int, NumberReading?> part)
    {
        var at = start.Next;
        var and = at < tokens.Count && tokens[at].IsWord("and");
        return part(and ? at + 1 : at) is { } more && !FractionFollows(more)
            ? start with { Value = start.Value + more.Value, Next = more.Next }
            : start;
    }

    private bool FractionFollows(NumberReading part) =>
        part.Next < tokens.Count && NumberWords.Denominator(tokens[part.Next].Stem) is not null;

    private NumberReading? BelowThousand(int at) =>
        BelowHundred(at) is not { } start ? null
        : start.Next < tokens.Count && tokens[start.Next].IsWord("hundred")
            ? Plus(start with { Value = start.Value * 100, Next = start.Next + 1 }, BelowHundred)
            : start;

    private NumberReading? BelowHundred(int at)
    {
        if (at >= tokens.Count)
        {
            return null;
        }

        var token = tokens[at];
        if (token.Kind == TokenKind.Digits)
        {
            return token.Lead == '\0' && token.Text.Length <= 3 && !JoinsOn(at) ? Whole(at + 1, Decimal(token.Text)) : null;
        }

        if (NumberWords.Teen(token.Stem) is { } teen)
        {
            return Whole(at + 1, teen);
        }

        if (NumberWords.Tens(token.Stem) is { } tens)
        {
            var unit = at + 1 < tokens.Count ? NumberWords.Unit(tokens[at + 1].Stem) : null;
            return Whole(unit is null ? at + 1 : at + 2, tens + (unit ?? 0));
        }

        return NumberWords.Unit(token.Stem) is { } one ? Whole(at + 1, one) : null;
    }

    private bool JoinsOn(int at) => at + 1 < tokens.Count && tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true };

    private bool IsArticle(int at) => tokens[at].Stem is "a";

    private NumberReading? Article(int at) =>
        at + 1 < tokens.Count && IsArticle(at) && tokens[at + 1].Stem is "hundred" or "thousand" ? Whole(at + 1, 1) : null;

    private static NumberReading Whole(int next, decimal value) => new(next, value, 0, true);

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
