using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Phrases by their stems, each with what it can mean.</summary>
internal sealed class PhraseTrie<T>
{
    private readonly Dictionary<(int Node, string Stem), int> _next = [];
    private readonly List<List<T>?> _meanings = [null];

    public bool IsEmpty => _next.Count == 0;

    /// <summary>Every stem of every phrase.</summary>
    public IEnumerable<string> Stems => _next.Keys.Select(step => step.Stem);

    public void Add(IReadOnlyList<string> stems, T meaning)
    {
        var node = 0;
        foreach (var stem in stems)
        {
            if (!_next.TryGetValue((node, stem), out var next))
            {
                next = _meanings.Count;
                _meanings.Add(null);
                _next[(node, stem)] = next;
            }

            node = next;
        }

        if (node != 0 && !(_meanings[node] ??= []).Contains(meaning))
        {
            _meanings[node]!.Add(meaning);
        }
    }

    /// <summary>What a phrase means; none where it is not known.</summary>
    public IReadOnlyList<T> Find(IReadOnlyList<string> stems)
    {
        var node = 0;
        foreach (var stem in stems)
        {
            if (!_next.TryGetValue((node, stem), out node))
            {
                return [];
            }
        }

        return (IReadOnlyList<T>?)_meanings[node] ?? [];
    }

    /// <summary>The longest phrase that starts at a token; null where none does.</summary>
    public (int Length, IReadOnlyList<T> Meanings)? Longest(IReadOnlyList<Token> tokens, int at)
    {
        (int Length, IReadOnlyList<T> Meanings)? longest = null;
        var node = 0;
        for (var next = at; next < tokens.Count && _next.TryGetValue((node, tokens[next].Stem), out node); next++)
        {
            if (_meanings[node] is { } meanings)
            {
                longest = (next + 1 - at, meanings);
            }
        }

        return longest;
    }

    /// <summary>The longest phrases of a text from left to right, none over another.</summary>
    public List<Phrase<T>> Cover(IReadOnlyList<Token> tokens)
    {
        var spans = new List<Phrase<T>>();
        for (var at = 0; at < tokens.Count;)
        {
            if (Longest(tokens, at) is { } phrase)
            {
                spans.Add(new(at, at + phrase.Length, phrase.Meanings));
                at += phrase.Length;
            }
            else
            {
                at++;
            }
        }

        return spans;
    }
}

/// <summary>A phrase where it stands in a text.</summary>
internal sealed record Phrase<T>(int First, int Next, IReadOnlyList<T> Meanings)
{
    public int Length => Next - First;

    /// <summary>How far the words sound from the phrase they are taken for; 0 where they are the phrase.</summary>
    public double Cost { get; init; }

    public bool Holds<TOther>(Phrase<TOther> other) => First <= other.First && other.Next <= Next && Length > other.Length;
}
