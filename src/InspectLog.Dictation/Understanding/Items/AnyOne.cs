using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Tells what is said of any one part, "a good coil", from what is said of the one of this car.</summary>
internal static class AnyOne
{
    /// <summary>"A good coil reads about ten k", "a pickup pulled in": of coils in general, or of something else, unless
    /// a cylinder tells which.</summary>
    public static bool Holds(Sentence sentence)
    {
        var (tokens, phrases, at, next) = (sentence.Tokens, sentence.Phrases, sentence.Opening, sentence.Next);
        if (at + 3 >= next || tokens[at].Stem is not ("a" or "an") || phrases.Match(at + 1) is not { } first
            || !first.Meanings.Any(term => term.Condition is not null || term.Role == Role.Good || term.Subject))
        {
            return false;
        }

        var described = first.Meanings.Any(term => term.Condition is not null || term.Role == Role.Good);
        var noun = at + 1 + (described ? first.Length : 0);
        var after = noun;
        while (after < next && phrases.Means(after, term => term.Subject))
        {
            after += phrases.Match(after)!.Value.Length;
        }

        var goesOn = after < next && tokens[after].Kind == TokenKind.Word
            && !phrases.Means(after, term => term.Role is Role.Preposition or Role.And);
        return after > noun && goesOn;
    }
}
