namespace InspectLog.Journal.Index;

/// <summary>Where a text holds words that were looked for. Pure.</summary>
public static class SearchedWords
{
    /// <summary>The parts of a text that are such words, or begin with them: start, and position after the end, in order.
    /// </summary>
    /// <param name="text">The text as it is shown.</param>
    /// <param name="words">What was looked for, as it was typed.</param>
    public static IEnumerable<(int Start, int End)> In(string text, string words)
    {
        var wanted = Words.Of(words);
        return WordRuns.Of(text).Where(run => Words.Of(text[run.Start..run.End]).Any(held => wanted.Any(word => Words.Finds(word, held))));
    }
}
