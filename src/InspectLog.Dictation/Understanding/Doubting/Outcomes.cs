using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Tells an outcome that is waited for, "cleaned it, see if it helps", from a condition for what is to be done,
/// "clean it if it's wet".</summary>
internal sealed class Outcomes(ReadWords words)
{
    private readonly IReadOnlyList<Token> _tokens = words.Tokens;

    /// <summary>Whether an "if" or "whether" only asks for the outcome of what was done before.</summary>
    /// <param name="at">Its token.</param>
    public bool OpenedBy(int at) =>
        at > 0 && at < _tokens.Count && _tokens[at].Text is "if" or "whether" && _tokens[at - 1].Text is "see" or "seeing" or "check" or "checking" or "wonder" or "wondering"
        && !IsOrder(words.SentenceStart(at), at - 1);

    // "Clean it and see if", "put it back, see if": the first verb may be an order too. "I put it back" is none.
    private bool IsOrder(int first, int look) =>
        _tokens[look].Text is "see" or "check" && look > first && _tokens[look - 1].IsWord("and")
        || Enumerable.Range(first, look - first).Any(at => _tokens[at].Text is "put" or "set" or "reset" or "shut" or "cut" or "fit" or "clean" or "please"
            && !(at > first && words.Is(at, WordReading.Predicate) && _tokens[at - 1].Text is "i" or "we"));
}
