namespace InspectLog.Benchmarks.Dictation;

/// <summary>Word error: the fewest words substituted, dropped and added to get from what was said to what was heard,
/// over the words said. Texts are normalised first.</summary>
public sealed class WordErrorRate
{
    /// <summary>Words said so far.</summary>
    public int Words { get; private set; }

    /// <summary>Errors so far.</summary>
    public int Errors { get; private set; }

    /// <summary>Errors over words; 0 when nothing was said.</summary>
    public double Rate => Words == 0 ? 0 : (double)Errors / Words;

    /// <summary>Counts one utterance.</summary>
    /// <returns>Its errors.</returns>
    public int Add(string said, string heard)
    {
        var reference = SpokenTextNormaliser.Words(said);
        var errors = Distance(reference, SpokenTextNormaliser.Words(heard));
        Words += reference.Count;
        Errors += errors;
        return errors;
    }

    /// <summary>Levenshtein's distance between two lists of words.</summary>
    public static int Distance(IReadOnlyList<string> from, IReadOnlyList<string> to)
    {
        var row = Enumerable.Range(0, to.Count + 1).ToArray();
        for (var i = 1; i <= from.Count; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Count; j++)
            {
                var substitute = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substitute, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
