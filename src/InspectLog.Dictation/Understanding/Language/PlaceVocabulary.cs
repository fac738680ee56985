using System.Collections.Frozen;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>The words that join, stretch and count places.</summary>
internal sealed class PlaceVocabulary
{
    private readonly PhraseTrie<bool> _ranges = new();
    private readonly PhraseTrie<bool> _onward = new();
    private readonly PhraseTrie<bool> _upTo = new();

    public PlaceVocabulary(PlaceWordsFile file, Tokenizer tokenizer)
    {
        Fill(_ranges, file.Range);
        Fill(_onward, file.Onward);
        Fill(_upTo, file.UpTo);
        Join = file.Join.ToFrozenSet(StringComparer.Ordinal);
        First = file.First.ToFrozenSet(StringComparer.Ordinal);
        Last = file.Last.ToFrozenSet(StringComparer.Ordinal);
        Past = file.Past.ToFrozenSet(StringComparer.Ordinal);
        From = file.From.ToFrozenSet(StringComparer.Ordinal);
        Noun = file.Noun.ToFrozenSet(StringComparer.Ordinal);

        void Fill(PhraseTrie<bool> trie, IEnumerable<string> phrases)
        {
            foreach (var phrase in phrases)
            {
                var stems = tokenizer.StemsOf(phrase);
                trie.Add(stems.Length > 0 ? stems : [phrase], true); // a dash alone is no word of a text
            }
        }
    }

    public FrozenSet<string> Join { get; }

    public FrozenSet<string> First { get; }

    public FrozenSet<string> Last { get; }

    public FrozenSet<string> Past { get; }

    public FrozenSet<string> From { get; }

    public FrozenSet<string> Noun { get; }

    /// <summary>Whether the tokens between two numbers say "to".</summary>
    public bool IsRange(IReadOnlyList<Token> tokens, int first, int next) =>
        next > first && _ranges.Longest(tokens, first) is { } range && range.Length == next - first;

    /// <summary>How many tokens say "and those that follow".</summary>
    public int Onward(IReadOnlyList<Token> tokens, int at) => _onward.Longest(tokens, at)?.Length ?? 0;

    /// <summary>Whether the two tokens before a place say "up to".</summary>
    public bool UpToBefore(IReadOnlyList<Token> tokens, int at) => at >= 2 && _upTo.Longest(tokens, at - 2) is { Length: 2 };
}
