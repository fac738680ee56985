using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>What was done, heard without its last sound: "change the pickup gap to 0.35" for "changed". In writing it would be
/// an order, so this is for what was heard only.</summary>
internal sealed class LostEndings(Lexicon lexicon)
{
    // Verbs whose past is told by a last d or t alone.
    private static readonly HashSet<string> Verbs = Words(
        "change|clean|replace|swap|open|close|brush|regap|renew|remove|wipe|tighten|loosen|turn|move|unplug|unclip|refix|secure|"
        + "retime|plug|pull|gap|dress|file|dry|lower|raise|advance");

    // Those that say how something is, too: "clean plugs", "close to the limit".
    private static readonly HashSet<string> AlsoConditions = Words("clean|open|close|secure|plug|gap|dry|lower");

    private static readonly HashSet<string> Before = Words("i|we|so|and|just|then|also");
    private static readonly HashSet<string> Determiners = Words("the|it|them|all|both|that|those|up|down|out");

    // Who speaks of what is to be done, or is done as a rule, says one of these.
    private static readonly HashSet<string> OfOrders = Words(
        "please|you|your|if|when|should|must|need|want|would|will|'ll|could|can|may|might|let|do|not|never|always|next|later|tomorrow|"
        + "tonight|today|before|until|once|again|first|every|sometime|usually");

    /// <summary>The text with such verbs taken for what was done.</summary>
    public TakenText In(TakenText text)
    {
        for (var first = 0; first < text.Tokens.Count;)
        {
            var next = SentenceEnd(text.Tokens, first);
            foreach (var at in IsOfOrders(text.Tokens, first, next) ? [] : Lost(text.Tokens, first, next).ToList())
            {
                text = text.With(at, at + 1, Past(text.Tokens[at].Text));
            }

            first = next + 1;
        }

        return text;
    }

    private IEnumerable<int> Lost(IReadOnlyList<Token> tokens, int first, int next) =>
        Enumerable.Range(first, next - first).Where(at => Verbs.Contains(tokens[at].Text) && (IsSaidOf(tokens, first, at, next) || Begins(tokens, first, at, next)));

    // "All plugs regap to 0.8", "lead 3 replace".
    private bool IsSaidOf(IReadOnlyList<Token> tokens, int first, int at, int next) =>
        at > first && !AlsoConditions.Contains(tokens[at].Text) && (tokens[at - 1].Kind == TokenKind.Digits || lexicon.IsSubjectWord(tokens[at - 1].Stem))
        && (at + 1 == next || tokens[at + 1].Kind == TokenKind.Mark || tokens[at + 1].Stem is "to" or "with" or "and");

    private bool Begins(IReadOnlyList<Token> tokens, int first, int at, int next) =>
        at + 1 < next
            && (Opens(tokens, first, at) || at - 2 >= first && tokens[at - 1].IsWord("and") && IsPast(tokens[at - 2]))
            && (Determiners.Contains(tokens[at + 1].Text) || tokens[at].Text is "open" or "close" or "gap" && HasNewValue(tokens, at, next) || !AlsoConditions.Contains(tokens[at].Text) && lexicon.IsSubjectWord(tokens[at + 1].Stem));

    // "Open plug 3 to 0.9".
    private static bool HasNewValue(IReadOnlyList<Token> tokens, int at, int next) =>
        Enumerable.Range(at + 2, Math.Max(0, next - at - 3)).Any(to => tokens[to].Stem is "to" or "at" && tokens[to + 1].Kind == TokenKind.Digits);

    // "Wire brush plug 4": the first word of a clause but for the wire.
    private static bool Opens(IReadOnlyList<Token> tokens, int first, int at)
    {
        var from = at > first && tokens[at - 1].IsWord("wire") ? at - 1 : at;
        while (from > first && Before.Contains(tokens[from - 1].Text))
        {
            from--;
        }

        return from == first || tokens[from - 1].Kind == TokenKind.Mark;
    }

    private static bool IsPast(Token token) => token.Kind == TokenKind.Word && token.Text.EndsWith("ed", StringComparison.Ordinal);

    private static string Past(string verb) => verb switch
    {
        [.., 'e'] => verb + "d",
        [.., 'r', 'y'] => verb[..^1] + "ied",
        [.., 'a' or 'i', 'p'] => verb + "ped",
        [.., 'u', 'g'] => verb + "ged",
        _ => verb + "ed",
    };

    private static bool IsOfOrders(IReadOnlyList<Token> tokens, int first, int next) =>
        next < tokens.Count && tokens[next].IsMark('?') || Enumerable.Range(first, next - first).Any(at => OfOrders.Contains(tokens[at].Text));

    private static int SentenceEnd(IReadOnlyList<Token> tokens, int at)
    {
        while (at < tokens.Count && !tokens[at].EndsSentence)
        {
            at++;
        }

        return at;
    }

    private static HashSet<string> Words(string words) => new(words.Split('|'), StringComparer.Ordinal);
}
