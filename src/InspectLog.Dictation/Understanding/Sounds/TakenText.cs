using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A text of which some words are taken for others that sound the same and that alone make sense where they
/// stand.</summary>
/// <param name="Tokens">Its words as they are taken.</param>
/// <param name="HeardAs">By where in the text a word taken for another starts: what was written there.</param>
internal sealed record TakenText(IReadOnlyList<Token> Tokens, IReadOnlyDictionary<int, string> HeardAs)
{
    /// <summary>A text as it is written.</summary>
    public static TakenText AsWritten(IReadOnlyList<Token> tokens) => new(tokens, new Dictionary<int, string>());

    /// <summary>The text with a run of words taken for one word.</summary>
    public TakenText With(int first, int next, string word)
    {
        var (start, end) = (Tokens[first].Start, Tokens[next - 1].End);
        var taken = new Token(TokenKind.Word, word, Stems.Of(word), start, end);
        var written = string.Join(' ', Tokens.Skip(first).Take(next - first).Select(token => token.Text));
        return new(
            [.. Tokens.Take(first), taken, .. Tokens.Skip(next)],
            new Dictionary<int, string>(HeardAs) { [start] = written });
    }
}
