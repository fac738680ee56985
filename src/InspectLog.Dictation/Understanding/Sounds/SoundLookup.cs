using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>What the words of one text sound like, each run of words looked up once. A long text may have its words
/// looked up again and again, for every way to read a clause.</summary>
internal sealed class SoundLookup(Lazy<SoundLexicon> lexicon)
{
    private readonly Dictionary<(string Heard, double Strictness, bool NumbersOnly), IReadOnlyList<SoundMatch>> _found = [];

    /// <summary>How many runs of words were looked up among all phrases.</summary>
    public int Count { get; private set; }

    /// <inheritdoc cref="SoundLexicon.Near"/>
    public IReadOnlyList<SoundMatch> Near(IReadOnlyList<Token> heard, double strictness, bool numbersOnly)
    {
        var key = (string.Join(' ', heard.Select(token => token.Text)), strictness, numbersOnly);
        if (!_found.TryGetValue(key, out var matches))
        {
            Count += numbersOnly ? 0 : 1;
            _found[key] = matches = lexicon.Value.Near(heard, strictness, numbersOnly);
        }

        return matches;
    }
}
