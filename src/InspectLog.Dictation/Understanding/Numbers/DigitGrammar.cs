using System.Globalization;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Numbers written in digits: what groups of digits, joined by points, commas or a slash, can mean.</summary>
internal sealed class DigitGrammar(IReadOnlyList<Token> tokens)
{
    private const int MostDigits = 9;

    public IEnumerable<NumberReading> At(int at)
    {
        if (at >= tokens.Count || tokens[at].Kind != TokenKind.Digits || tokens[at].Text.Length > MostDigits)
        {
            yield break;
        }

        var end = at + 1;
        while (end < tokens.Count && tokens[end] is { Kind: TokenKind.Digits, Glued: true, Lead: not '\0' })
        {
            end++;
        }

        if (end - at > 1 && tokens[at].Lead == '\0')
        {
            foreach (var joined in Joined(at, end))
            {
                yield return joined;
            }
        }

        foreach (var alone in Alone(at, end))
        {
            yield return alone;
        }
    }

    private IEnumerable<NumberReading> Joined(int at, int end)
    {
        var first = tokens[at].Text;
        var second = tokens[at + 1];
        if (second.Text.Length > MostDigits)
        {
            yield break;
        }

        if (second.Lead == '/')
        {
            var below = Number(second.Text);
            if (below != 0)
            {
                yield return new(at + 2, Number(first) / below, 0, false);
            }

            yield break;
        }

        var groups = ThousandsGroups(at, end);
        var asThousands = groups > 0 ? Thousands(at, groups, end) : default(NumberReading?);
        var asDecimal = end == at + 2 ? new NumberReading(end, Number($"{first}.{second.Text}"), 0, false) : default(NumberReading?);
        var pointed = second.Lead == '.';
        if (asDecimal is { } plain)
        {
            yield return plain with { Cost = pointed ? 0 : groups > 0 ? 0.6 : 0.3 };
            if (pointed && StrayDigit(end) is { } stray)
            {
                yield return new(end + 2, Number($"{first}.{second.Text}{stray}"), 2.5, false, "the figures were written apart");
            }
        }

        if (asThousands is { } grouped)
        {
            yield return grouped with { Cost = pointed ? 0.6 : 0 };
        }
    }

    // "0.8, 5": a digit that Whisper cut off a decimal.
    private string? StrayDigit(int at) =>
        at + 1 < tokens.Count && tokens[at].IsMark(',') && tokens[at + 1] is { Kind: TokenKind.Digits, Text.Length: 1, Lead: '\0' } digit
        && (at + 2 == tokens.Count || tokens[at + 2].Kind == TokenKind.Mark)
            ? digit.Text : null;

    // How many groups of three follow, all with the same mark: "12,300", "9.850".
    private int ThousandsGroups(int at, int end)
    {
        if (tokens[at].Text.Length > 3 || tokens[at].Text[0] == '0')
        {
            return 0;
        }

        var groups = 0;
        while (at + groups + 1 < end && groups < 2 && tokens[at + groups + 1] is { Text.Length: 3 } group
               && group.Lead == tokens[at + 1].Lead)
        {
            groups++;
        }

        return groups;
    }

    private NumberReading Thousands(int at, int groups, int end)
    {
        var digits = string.Concat(Enumerable.Range(at, groups + 1).Select(i => tokens[i].Text));
        var next = at + groups + 1;
        if (next < end && tokens[next].Lead == '.' && tokens[next - 1].Lead == ',' && tokens[next].Text.Length <= 4)
        {
            return new(next + 1, Number($"{digits}.{tokens[next].Text}"), 0, false);
        }

        return new(next, Number(digits), 0, true);
    }

    // One group by itself. Free where it stands alone; where Whisper joined it to others, it costs a split, except
    // in a row of single digits such as "1.2.3.4.5.6", which is no number at all.
    private IEnumerable<NumberReading> Alone(int at, int end)
    {
        var token = tokens[at];
        var row = end - at >= 3 && Enumerable.Range(at, end - at).All(i => tokens[i].Text.Length == 1);
        var cost = end - at == 1 || token.Lead != '\0' ? 0 : row ? 0.1 : NumberGrammar.SplitCost;
        if (token.Lead == '\0')
        {
            yield return new(at + 1, Number(token.Text), cost, true, cost >= NumberGrammar.SplitCost ? "the figures were written as one number" : null);
        }
        else if (token.Lead is '.' or ',')
        {
            var opens = token.Lead == '.' && !token.Glued;
            var inRow = at > 0 && tokens[at - 1].Kind == TokenKind.Digits && token.Text.Length == 1;
            yield return new(at + 1, Number($"0.{token.Text}"), InRow(at) ? 2 : token.Lead == '.' ? 0 : 0.5, false);
            if (!opens && inRow)
            {
                yield return new(at + 1, Number(token.Text), 0.1, true);
            }
        }
    }

    // "1.2.3": more than two single digits with the same mark between them.
    private bool InRow(int at) => Marked(at - 1) || Marked(at + 1);

    private bool Marked(int at) =>
        at >= 0 && at < tokens.Count && tokens[at] is { Kind: TokenKind.Digits, Glued: true, Text.Length: 1, Lead: '.' or ',' };

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
