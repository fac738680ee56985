using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Finds where a number, or a part of one, was not understood: "on run and two", "eleven and a have".</summary>
/// <param name="words">The words of the text.</param>
/// <param name="gaps">Where in the text words stand that belong to a number and were not understood.</param>
internal sealed class NumberHoles(ReadWords words, IReadOnlySet<int> gaps)
{
    private readonly IReadOnlyList<Token> _tokens = words.Tokens;
    private readonly TextReading _reading = words.Reading;

    /// <summary>Whether a number belongs where a token stands.</summary>
    /// <param name="at">The token.</param>
    /// <param name="next">The token after its clause.</param>
    public bool IsGap(int at, int next) => IsGap(at) || IsLonePoint(at) && at + 1 < next && IsGap(at + 1);

    /// <summary>Whether a unit or a point has no number.</summary>
    public bool IsNumberless(int at, int first, int next) => IsLoneUnit(at, first, next) || IsLonePoint(at);

    /// <summary>Whether a word stands where the words around it call for a number.</summary>
    public bool IsHole(int at, int first, int next) =>
        IsHoleInList(at, first, next) || IsHoleAfterMark(at, first, next) || at == first && IsNumberBeforePredicate(at, next) || IsHoleInNumber(at, first, next);

    private bool IsGap(int at) => gaps.Contains(_tokens[at].Start);

    /// <summary>Whether a word that is no number sounds like one.</summary>
    public bool IsNumberSound(int at) => !words.Is(at, WordReading.Number) && _tokens[at].Text is "to" or "too" or "for" or "won" or "ate" or "fore" or "do" or "due";

    private bool IsLonePoint(int at) =>
        !words.Is(at, WordReading.Number) && _tokens[at].Kind == TokenKind.Word && NumberWords.IsPoint(_tokens[at].Stem);

    // "Number run is good", "all except far", "terminal do is corroded".
    private bool IsHoleAfterMark(int at, int first, int next) =>
        at > first && (_tokens[at - 1].Text is "number" or "cylinder" or "except"
            && (_reading.Words[at] is WordReading.Unknown or WordReading.Predicate || IsNumberSound(at))
            || IsNumberSound(at) && _tokens[at].Text is "do" or "due" && words.Is(at - 1, WordReading.Name) && at + 1 < next);

    // "Eleven and a have", "tan and a half k", "live an point three", "off four a look".
    private bool IsHoleInNumber(int at, int first, int next)
    {
        if (words.Is(at, WordReading.Number))
        {
            var opens = at > first && !words.Is(at - 1, WordReading.Number);
            var part = NumberWords.IsPoint(_tokens[at].Stem) || _tokens[at].Stem is "half" or "a" || at + 1 < next && words.Is(at + 1, WordReading.Number) && NumberWords.Denominator(_tokens[at + 1].Stem) is not null;
            return opens && part && _tokens[at - 1].Stem is "and" or "an" && at - 1 > first && _reading.Words[at - 2] is WordReading.Unknown or WordReading.Predicate
                || opens && NumberWords.IsPoint(_tokens[at].Stem) && _reading.Words[at - 1] is WordReading.Unknown
                || _tokens[at].Text is "four" or "two" && at + 2 < next && _tokens[at + 1].Text is "a" && !words.Is(at + 1, WordReading.Number);
        }

        return _tokens[at].IsWord("and") && at > first && words.Is(at - 1, WordReading.Number) && at + 2 < next + 1 && at + 2 < _tokens.Count
            && _tokens[at + 1].Text is "a" && !words.Is(at + 1, WordReading.Number) && _reading.Words[at + 2] is WordReading.Unknown or WordReading.Tie or WordReading.Small;
    }

    // "No, eight in k", "ten and a have k"; but not "volts at the ballast" or "ten, not nine, k".
    private bool IsLoneUnit(int at, int first, int next) =>
        !words.Is(at, WordReading.Number) && !(words.Is(at, WordReading.Aside) && at > 0 && (_tokens[at - 1].Kind == TokenKind.Digits || words.Numbers.Numbers(at - 1).Count > 0)) && _tokens[at].Kind == TokenKind.Word && next - first > 1
        && !(at == first && words.Is(at + 1, WordReading.Small)) && words.Numbers.Unit(at) is { Foreign: false, Angle: false, Doubt: null };

    // "On run and two", "plugs when and four".
    private bool IsHoleInList(int at, int first, int next) =>
        at > first && at + 2 < next && (_reading.Words[at] is WordReading.Unknown or WordReading.Predicate || IsNumberSound(at))
        && (_tokens[at - 1].Stem is "on" or "and" or "of" or "for" || IsNumberSound(at) && words.Is(at - 1, WordReading.Name))
        && _tokens[at + 1].Stem is "and" or "or" && words.Is(at + 2, WordReading.Number)
        && (_tokens[at - 1].Stem != "and" || at - 1 > first && words.Is(at - 2, WordReading.Number));

    // "Too fires": two fires.
    private bool IsNumberBeforePredicate(int at, int next) =>
        _tokens[at].Text is "to" or "too" or "for" or "won" or "ate" or "fore" && at + 1 < next
        && (words.Is(at + 1, WordReading.Predicate) || _tokens[at + 1].Stem is "is" or "are" or "read");
}
