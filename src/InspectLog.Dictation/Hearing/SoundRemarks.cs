namespace InspectLog.Dictation.Hearing;

/// <summary>Drops what the model writes about sounds that are no speech, such as "[Music]" or "(wind blowing)".</summary>
internal static class SoundRemarks
{
    private static readonly (char Open, char Close)[] Brackets = [('[', ']'), ('(', ')'), ('*', '*'), ('♪', '♪')];

    /// <summary>The words without bracketed remarks. A bracket that holds a digit is speech and stays.</summary>
    public static IEnumerable<HeardWord> Drop(IReadOnlyList<HeardWord> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (EndOfRemark(words, i) is { } end)
                i = end;
            else if (words[i].Text.Any(char.IsLetterOrDigit))
                yield return words[i];
        }
    }

    private static int? EndOfRemark(IReadOnlyList<HeardWord> words, int start)
    {
        var close = Brackets.Where(pair => words[start].Text.StartsWith(pair.Open)).Select(pair => (char?)pair.Close).FirstOrDefault();
        if (close is null)
            return null;

        for (var i = start; i < words.Count && !words[i].Text.Any(char.IsAsciiDigit); i++)
        {
            var text = words[i].Text.TrimEnd('.', ',', '!', '?');
            if (text.EndsWith(close.Value) && (i > start || text.Length > 1))
                return i;
        }

        return null;
    }
}
