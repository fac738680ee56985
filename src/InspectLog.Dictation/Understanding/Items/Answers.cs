using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Tells "yes" and "no" that answer for a cylinder, "yes on one, no on three", "one yes, two no", from those that
/// open the talk or correct it.</summary>
internal sealed class Answers(PhraseLookup phrases, NumberRuns runs)
{
    private readonly IReadOnlyList<Token> _tokens = phrases.Tokens;
    private bool? _allAnswered;

    /// <summary>The answer a token is, or nothing.</summary>
    /// <param name="at">The token.</param>
    /// <param name="sentence">The items of its sentence that stand before it.</param>
    public Item? At(int at, IReadOnlyList<Item> sentence)
    {
        if (IsYes(at))
        {
            return BeforePlace(at) || AfterPlace(at) && Answered() > 1 ? new(at, at + 1, Role.Yes) : null;
        }

        return _tokens[at].Text == "no" && (BeforePlace(at) && (HasYes(BeforePlace) || IsFirst(sentence)) || AfterPlace(at) && HasYes(AfterPlace))
            ? new(at, at + 1, Role.Nothing)
            : null;
    }

    private bool IsYes(int at) => _tokens[at].Text is "yes" or "yep" or "yeah" or "yup" or "aye";

    private bool HasYes(Func<int, bool> where) => Enumerable.Range(0, _tokens.Count).Any(at => IsYes(at) && where(at));

    private int Answered() => Enumerable.Range(0, _tokens.Count).Count(at => IsAnswer(at) && AfterPlace(at));

    private bool IsAnswer(int at) => at < _tokens.Count && (IsYes(at) || _tokens[at].Text == "no");

    // "Spark: no on three": what was only named so far cannot be corrected.
    private static bool IsFirst(IReadOnlyList<Item> sentence) => sentence is [.., { Role: Role.Comma }] && sentence.Any(item => item.Subject)
        && sentence.All(item => item.Subject || item.Role is Role.Comma or Role.Filler);

    // "Yes on one", "no on the others".
    private bool BeforePlace(int at) => at + 2 < _tokens.Count && _tokens[at + 1].Text is "on" or "at" or "for"
        && (runs.At(at + 2, _tokens.Count) is not null || _tokens[at + 2].IsWord("the")
            || phrases.Means(at + 2, term => term.Role is Role.PlaceMark or Role.All or Role.Rest or Role.Both));

    // "One yes, two no", "on one, yes, on three, no"; but "on four, no, on three" corrects.
    private bool AfterPlace(int at) => (IsPlace(at - 1) || at > 1 && _tokens[at - 1].IsMark(',') && IsPlace(at - 2) && AllAnswered()) && Ends(at + 1);

    // It holds for the whole text, so that it is looked at once.
    private bool AllAnswered() => _allAnswered ??= Enumerable.Range(0, _tokens.Count).Where(IsPlace)
        .All(at => IsAnswer(at + 1) && Ends(at + 2) || at + 1 < _tokens.Count && _tokens[at + 1].IsMark(',') && IsAnswer(at + 2) && Ends(at + 3));

    private bool Ends(int at) => at >= _tokens.Count || _tokens[at].Kind == TokenKind.Mark || _tokens[at].IsWord("and");

    private bool IsPlace(int at) => at >= 0 && (_tokens[at] is { Kind: TokenKind.Digits, Text.Length: 1 } || NumberWords.Unit(_tokens[at].Stem) is not null);
}
