using System.Globalization;

namespace InspectLog.Journal.Index;

/// <summary>Where the words of a text begin and end. Pure.</summary>
internal static class WordRuns
{
    /// <summary>The runs of letters and digits. One that begins with digits is cut where they end, and digits parted by one
    /// comma or point are one number; of more than two such parts, as in a date or a list, each stands by itself. Marks
    /// that belong to the letter before them do not end a run.</summary>
    public static IEnumerable<(int Start, int End)> Of(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            if (!char.IsLetterOrDigit(text[at]))
            {
                at++;
                continue;
            }

            var end = char.IsAsciiDigit(text[at]) ? EndOfNumber(text, at) : EndOfWord(text, at);
            yield return (at, end);
            at = end;
        }
    }

    private static int EndOfNumber(string text, int start)
    {
        var whole = EndOfDigits(text, start);
        var decimals = AfterMark(text, whole);
        var isDecimal = decimals > whole && AfterMark(text, decimals) == decimals && !FollowsMark(text, start);
        return isDecimal ? decimals : whole;
    }

    /// <summary>Where the digits end that follow a comma or point; the same place where none do.</summary>
    private static int AfterMark(string text, int at) =>
        at + 1 < text.Length && text[at] is ',' or '.' && char.IsAsciiDigit(text[at + 1]) ? EndOfDigits(text, at + 1) : at;

    private static bool FollowsMark(string text, int start) =>
        start > 1 && text[start - 1] is ',' or '.' && char.IsAsciiDigit(text[start - 2]);

    private static int EndOfDigits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    private static int EndOfWord(string text, int at)
    {
        while (at < text.Length
            && (char.IsLetterOrDigit(text[at]) || CharUnicodeInfo.GetUnicodeCategory(text[at]) == UnicodeCategory.NonSpacingMark))
        {
            at++;
        }

        return at;
    }
}
