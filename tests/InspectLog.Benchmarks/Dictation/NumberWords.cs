using System.Globalization;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Turns English number words into digits, for comparing texts only.</summary>
internal static class NumberWords
{
    private static readonly string[] Small =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
        "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    public static IEnumerable<string> ToDigits(IReadOnlyList<string> words)
    {
        for (var at = 0; at < words.Count;)
        {
            var from = at;
            if (ReadNumber(words, ref at) is { } number)
            {
                yield return number;
                continue;
            }

            at = from + 1;
            yield return words[from];
        }
    }

    private static string? ReadNumber(IReadOnlyList<string> words, ref int at)
    {
        var whole = ReadWhole(words, ref at);
        var isPoint = at + 1 < words.Count && words[at] == "point" && Digit(words[at + 1]) is not null;
        if (!isPoint)
            return whole?.ToString(CultureInfo.InvariantCulture);

        at++;
        var digits = string.Empty;
        while (at < words.Count && Digit(words[at]) is { } digit)
        {
            digits += digit;
            at++;
        }

        var text = string.Create(CultureInfo.InvariantCulture, $"{whole ?? 0}.{digits}");
        return decimal.Parse(text, CultureInfo.InvariantCulture).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>Thousands, hundreds, tens, units, each at most once and in falling order.</summary>
    private static long? ReadWhole(IReadOnlyList<string> words, ref int at)
    {
        if (at + 1 < words.Count && words[at] is "oh" or "o" or "nought" && words[at + 1] == "point")
        {
            at++;
            return 0;
        }

        var below = ReadBelowThousand(words, ref at);
        if (below is null || at >= words.Count || words[at] != "thousand")
            return below;

        at++;
        var rest = at;
        if (ReadBelowThousand(words, ref rest) is not { } small)
            return below * 1000;
        at = rest;
        return (below * 1000) + small;
    }

    private static long? ReadBelowThousand(IReadOnlyList<string> words, ref int at)
    {
        var isAHundred = at + 1 < words.Count && words[at] == "a" && words[at + 1] is "hundred" or "thousand";
        long? value = isAHundred ? 1 : null;
        if (isAHundred)
            at++;
        else
            value = ReadBelowHundred(words, ref at);
        if (value is null || at >= words.Count || words[at] != "hundred")
            return value;

        at++;
        var rest = at < words.Count && words[at] == "and" ? at + 1 : at;
        if (ReadBelowHundred(words, ref rest) is not { } small)
            return value * 100;
        at = rest;
        return (value * 100) + small;
    }

    private static long? ReadBelowHundred(IReadOnlyList<string> words, ref int at)
    {
        if (at >= words.Count)
            return null;
        var small = Array.IndexOf(Small, words[at]);
        if (small >= 0)
        {
            at++;
            return small;
        }

        var tens = (Array.IndexOf(Tens, words[at]) + 2) * 10;
        if (tens < 20)
            return null;
        at++;
        var unit = at < words.Count ? Array.IndexOf(Small, words[at]) : -1;
        if (unit is < 1 or > 9)
            return tens;
        at++;
        return tens + unit;
    }

    private static string? Digit(string word)
    {
        if (word is "oh" or "o" or "nought")
            return "0";
        if (word.All(char.IsAsciiDigit))
            return word;
        var small = Array.IndexOf(Small, word);
        return small is >= 0 and <= 9 ? small.ToString(CultureInfo.InvariantCulture) : null;
    }
}
