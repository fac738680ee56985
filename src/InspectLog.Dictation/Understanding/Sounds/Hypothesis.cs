using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A phrase in the place of words that sound like it.</summary>
/// <param name="First">The first token it stands for.</param>
/// <param name="Next">The token after the last.</param>
/// <param name="Match">The phrase.</param>
/// <param name="Heard">The words it stands for.</param>
internal sealed record Replacement(int First, int Next, SoundMatch Match, string Heard);

/// <summary>What may have been said in place of misheard words: one replacement, or two after each other.</summary>
internal sealed record Hypothesis(IReadOnlyList<Replacement> Replacements)
{
    /// <summary>How far it is from what was heard.</summary>
    public double Cost { get; } = Replacements.Sum(replacement => replacement.Match.Cost);

    /// <summary>Whether a token is replaced.</summary>
    public bool Covers(int at) => Replacements.Any(one => one.First <= at && at < one.Next);

    // What was heard right of a phrase keeps its plural: "cat contacts" are cap contacts.
    private static string Number(Token phrase, Token heard) => phrase.Stem == heard.Stem ? heard.Text : phrase.Text;

    /// <summary>The tokens with the phrases in place, each standing in the text where the words heard stood.</summary>
    public IReadOnlyList<Token> Apply(IReadOnlyList<Token> tokens)
    {
        var replaced = new List<Token>(tokens.Count);
        var at = 0;
        foreach (var one in Replacements)
        {
            replaced.AddRange(tokens.Skip(at).Take(one.First - at));
            var (start, end) = (tokens[one.First].Start, tokens[one.Next - 1].End);
            replaced.AddRange(one.Match.Phrase.Tokens.Select(token => token with { Text = Number(token, tokens[one.Next - 1]), Start = start, End = end, Glued = false }));
            at = one.Next;
        }

        replaced.AddRange(tokens.Skip(at));
        return replaced;
    }
}
