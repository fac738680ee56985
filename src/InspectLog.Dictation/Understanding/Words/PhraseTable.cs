namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Phrases with what they mean, found by the longest match at a token.</summary>
internal sealed class PhraseTable<T>
{
    private readonly Dictionary<string, List<Entry>> _byFirst = new(StringComparer.Ordinal);

    private sealed record Entry(string[] Stems, List<T> Meanings);

    public bool IsEmpty => _byFirst.Count == 0;

    public void Add(string phrase, T meaning)
    {
        var stems = StemsOf(phrase);
        if (stems.Length == 0)
        {
            return;
        }

        if (!_byFirst.TryGetValue(stems[0], out var entries))
        {
            _byFirst[stems[0]] = entries = [];
        }

        var entry = entries.Find(known => known.Stems.AsSpan().SequenceEqual(stems));
        if (entry is null)
        {
            entries.Add(entry = new(stems, []));
            entries.Sort((a, b) => b.Stems.Length.CompareTo(a.Stems.Length));
        }

        if (!entry.Meanings.Contains(meaning))
        {
            entry.Meanings.Add(meaning);
        }
    }

    public static string[] StemsOf(string phrase) =>
        [.. Tokenizer.Cut(phrase).Where(token => token.Kind == TokenKind.Word).Select(token => token.Stem)];

    /// <summary>The longest phrase that starts at a token, with how many tokens it takes; or nothing.</summary>
    public (int Length, IReadOnlyList<T> Meanings)? Match(IReadOnlyList<Token> tokens, int at)
    {
        foreach (var match in Matches(tokens, at))
        {
            return match;
        }

        return null;
    }

    /// <summary>The phrases that start at a token, the longest first.</summary>
    public IEnumerable<(int Length, IReadOnlyList<T> Meanings)> Matches(IReadOnlyList<Token> tokens, int at)
    {
        if (tokens[at].Kind != TokenKind.Word || !_byFirst.TryGetValue(tokens[at].Stem, out var entries))
        {
            yield break;
        }

        foreach (var entry in entries.Where(entry => Fits(entry.Stems, tokens, at)))
        {
            yield return (entry.Stems.Length, entry.Meanings);
        }
    }

    private static bool Fits(string[] stems, IReadOnlyList<Token> tokens, int at)
    {
        if (at + stems.Length > tokens.Count)
        {
            return false;
        }

        for (var i = 1; i < stems.Length; i++)
        {
            if (!tokens[at + i].IsWord(stems[i]))
            {
                return false;
            }
        }

        return true;
    }
}
