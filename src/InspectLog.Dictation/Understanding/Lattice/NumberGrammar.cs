using System.Globalization;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Every number that can start at a token. Which is meant is decided by what stands around it.</summary>
internal sealed partial class NumberGrammar(SpokenLanguage language, IReadOnlyList<Token> tokens)
{
    private const int MostDecimals = 4;
    private readonly NumberVocabulary _words = language.Numbers;
    private readonly CardinalGrammar _cardinals = new(language.Numbers, tokens);

    public IReadOnlyList<NumberReading> At(int at)
    {
        var readings = new List<NumberReading>();
        if (_words.IsMinus(Word(at)))
        {
            foreach (var reading in at + 1 < tokens.Count ? Unsigned(at + 1) : [])
            {
                if (reading.Form is not (NumberForm.Alike or NumberForm.Ordinal))
                {
                    readings.Add(reading with { Value = -reading.Value });
                }
            }

            return readings;
        }

        return Unsigned(at);
    }

    private string Word(int at) => at < tokens.Count ? tokens[at].Text : "";

    private bool IsFigure(int at) => at < tokens.Count && tokens[at].Kind == TokenKind.Figure;

    private List<NumberReading> Unsigned(int at)
    {
        var found = new List<NumberReading>();
        WrittenDecimal(at, found);
        foreach (var (next, number) in _cardinals.At(at))
        {
            Add(found, next, number, NumberForm.Whole);
            AfterPoint(next, number, NumberForm.Decimal, found);
            WithFraction(next, number, found);
            PointLeftOut(next, number, found);
        }

        DigitByDigit(at, found);
        AfterPoint(at, 0, NumberForm.Decimal, found);
        FractionAlone(at, found);
        if (language.Units.ZeroAngle(tokens, at) is > 0 and var length)
        {
            Add(found, at + length, 0, NumberForm.ZeroAngle);
        }

        if (_words.Ordinal(Word(at)) is { } ordinal)
        {
            Add(found, at + 1, ordinal, NumberForm.Ordinal);
        }

        if (found.Count == 0 && _words.Alike(Word(at)) is { } alike)
        {
            Add(found, at + 1, alike, NumberForm.Alike);
        }

        return found;
    }

    private void WrittenDecimal(int at, List<NumberReading> found)
    {
        if (!IsFigure(at))
        {
            return;
        }

        if (tokens[at].Text.Contains('.', StringComparison.Ordinal))
        {
            Add(found, at + 1, Parse(tokens[at].Text), NumberForm.Decimal);
        }
        else if (at + 2 < tokens.Count && tokens[at + 1] is { Text: ",", Glued: true } && tokens[at + 2] is { Kind: TokenKind.Figure, Glued: true } decimals && decimals.Text.All(char.IsAsciiDigit))
        {
            Add(found, at + 3, Parse($"{tokens[at].Text}.{decimals.Text}"), NumberForm.Comma);
        }
    }

    // "Point four", "nine point four five".
    private void AfterPoint(int at, int whole, NumberForm form, List<NumberReading> found)
    {
        if (_words.IsPoint(Word(at)))
        {
            foreach (var (next, digits) in Decimals(at + 1, alikes: true))
            {
                Add(found, next, Parse($"{whole}.{digits}"), form);
            }
        }
    }

    private IEnumerable<(int Next, string Digits)> Decimals(int at, bool alikes)
    {
        var digits = "";
        for (var next = at; next < tokens.Count && digits.Length < MostDecimals; next++)
        {
            var word = Word(next);
            if (_words.Unit(word) is { } unit)
            {
                digits += unit;
            }
            else if (next == at && alikes && _words.Alike(word) is < 10 and var alike)
            {
                digits += alike;
            }
            else if (IsFigure(next) && word.All(char.IsAsciiDigit))
            {
                digits += word;
            }
            else
            {
                foreach (var (end, number) in _cardinals.Small(next))
                {
                    if (number >= 10)
                    {
                        yield return (end, digits + number);
                    }
                }

                yield break;
            }

            yield return (next + 1, digits);
        }
    }

    // "Nine eight" for 9.8, "one fifty" for 150, "twelve oh five" for 12.05.
    private void PointLeftOut(int next, int number, List<NumberReading> found)
    {
        if (number is < 0 or >= 100 || next >= tokens.Count || _words.Tens(Word(next - 1)) is not null && _words.Unit(Word(next)) is > 0)
        {
            return;
        }

        foreach (var (end, digits) in Decimals(next, alikes: false))
        {
            if (digits.Length <= 3)
            {
                Add(found, end, Parse($"{number}.{digits}"), NumberForm.PointLeftOut);
            }

            if (digits.Length == 2 && number is > 0 and < 100)
            {
                Add(found, end, number * 100 + int.Parse(digits, CultureInfo.InvariantCulture), NumberForm.HundredLeftOut);
            }
        }
    }

    // "One two point four" for 12.4.
    private void DigitByDigit(int at, List<NumberReading> found)
    {
        if (_words.Unit(Word(at)) is > 0 and var tens && _words.Unit(Word(at + 1)) is { } units)
        {
            Add(found, at + 2, tens * 10 + units, NumberForm.Digits);
            AfterPoint(at + 2, tens * 10 + units, NumberForm.Decimal, found);
        }
    }

    // The same span and number once, as it was read first.
    private static void Add(List<NumberReading> found, int next, double value, NumberForm form)
    {
        if (!found.Exists(known => known.Next == next && Math.Abs(known.Value - value) < 1e-6))
        {
            found.Add(new(next, value, form));
        }
    }

    private static double Parse(string figures) => double.Parse(figures.Length > 15 ? figures[..15] : figures, CultureInfo.InvariantCulture);
}
