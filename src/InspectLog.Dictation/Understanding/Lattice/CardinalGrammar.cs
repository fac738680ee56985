using System.Globalization;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Whole numbers, in words or figures.</summary>
internal sealed class CardinalGrammar(NumberVocabulary words, IReadOnlyList<Token> tokens)
{
    private const int LongestFigures = 9;

    /// <summary>A digit; null where none stands.</summary>
    public int? Digit(int at) => words.Unit(Word(at)) ?? (Word(at) is [>= '0' and <= '9'] figure ? figure[0] - '0' : null);

    /// <summary>Numbers below a hundred.</summary>
    public IEnumerable<(int Next, int Number)> Small(int at)
    {
        var word = Word(at);
        if (words.Unit(word) is { } unit)
        {
            yield return (at + 1, unit);
        }
        else if (words.Teen(word) is { } teen)
        {
            yield return (at + 1, teen);
        }
        else if (words.Tens(word) is { } tens)
        {
            yield return (at + 1, tens);
            if (words.Unit(Word(at + 1)) is > 0 and var ones)
            {
                yield return (at + 2, tens + ones);
            }
        }
        else if (word.Length <= 2 && Figures(at) is { } figures)
        {
            yield return (at + 1, figures);
        }
    }

    /// <summary>Numbers of any size.</summary>
    public IEnumerable<(int Next, int Number)> At(int at)
    {
        var found = Small(at).ToList();
        if (Figures(at) is { } figures && Word(at).Length > 2)
        {
            found.Add((at + 1, figures));
        }

        var counts = words.IsOne(Word(at)) && words.Multiple(Word(at + 1)) is not null ? [(at + 1, 1)] : found.ToList();
        foreach (var (next, count) in counts)
        {
            Multiply(next, count, found);
        }

        return found.Distinct();
    }

    private void Multiply(int next, int count, List<(int Next, int Number)> found)
    {
        if (words.Multiple(Word(next)) is not { } multiple || (long)count * multiple > 100_000_000)
        {
            return;
        }

        var number = count * multiple;
        found.Add((next + 1, number));
        if (multiple == 100)
        {
            Multiply(next + 1, number, found);
        }

        var rest = words.IsAnd(Word(next + 1)) ? next + 2 : next + 1;
        foreach (var (end, part) in multiple == 100 ? Small(rest) : Small(rest).Concat(Hundreds(rest)))
        {
            found.Add((end, number + part));
            if (multiple == 100)
            {
                Multiply(end, number + part, found);
            }
        }
    }

    private IEnumerable<(int Next, int Number)> Hundreds(int at)
    {
        foreach (var (next, count) in Small(at))
        {
            if (words.Multiple(Word(next)) == 100)
            {
                yield return (next + 1, count * 100);
                var rest = words.IsAnd(Word(next + 1)) ? next + 2 : next + 1;
                foreach (var (end, part) in Small(rest))
                {
                    yield return (end, count * 100 + part);
                }
            }
        }
    }

    private string Word(int at) => at < tokens.Count ? tokens[at].Text : "";

    private int? Figures(int at) => at < tokens.Count && tokens[at].Kind == TokenKind.Figure && Word(at).Length <= LongestFigures && Word(at).All(char.IsAsciiDigit)
        ? int.Parse(Word(at), CultureInfo.InvariantCulture)
        : null;
}
