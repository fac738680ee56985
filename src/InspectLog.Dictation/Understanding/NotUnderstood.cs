using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding;

/// <summary>Marks findings beside words that were not understood, for such a word may be one that was misheard: "week
/// spark" is no plain spark, and in "weak on run and two" a cylinder is missing.</summary>
internal sealed class NotUnderstood(RepairedText text, IReadOnlyDictionary<int, string> heardAs)
{
    private const string Unknown = "was not understood";
    private const string NoNumber = "stands where a number belongs";
    private const string Numberless = "stands without a number";

    // How many words back a name left out of "the rest" may stand.
    private const int RestReach = 12;

    // A clause of no more words than these that says nothing may have been the place or part of the next one.
    private const int ShortClause = 2;

    // Words of all talk that say nothing of how something is.
    private static readonly HashSet<string> Everyday = new(
        ("came|come|comes|went|going|call|called|sees|back|one|ones|put|time|side|end|way|place|car|again|me|us|him|so|by|if|as|than|"
        + "twice|somewhere|nope|total|old|static|fitted|refitted|clipped|cranks|tight|second|between").Split('|'), StringComparer.Ordinal);

    private readonly IReadOnlyList<Token> _tokens = text.Tokens;
    private readonly TextReading _reading = text.Reading;
    private readonly NumberLookup _numbers = new(text.Tokens);
    private readonly WordDoubts _doubts = new(text.Tokens, text.Reading.Findings);

    /// <summary>The findings, those beside something not understood marked.</summary>
    public IReadOnlyList<Finding> Mark()
    {
        for (var first = 0; first < _tokens.Count;)
        {
            var next = Clause.End(_tokens, first);
            InClause(first, next);
            first = next + 1;
        }

        return new Groundless(_numbers, IsStrange).Without(_doubts.Marked());
    }

    private void InClause(int first, int next)
    {
        var within = Within(first, next);
        for (var at = first; at < next; at++)
        {
            if (heardAs.TryGetValue(_tokens[at].Start, out var heard))
            {
                _doubts.Add(within, at, $"was heard as '{heard}'");
            }
            else if (_tokens[at].Text is "please" or "if")
            {
                _doubts.Add([.. Within(SentenceStart(at), SentenceEnd(at)).Where(i => _reading.Findings[i].Kind == FindingKind.Action)], at, "is said of what is to be done");
            }
            else if (IsGap(at) || IsLonePoint(at) && at + 1 < next && IsGap(at + 1))
            {
                _doubts.Add(within, at, NoNumber);
            }
            else if (IsLoneUnit(at, first, next) || IsLonePoint(at))
            {
                _doubts.Add(within.Count > 0 ? within : LastBefore(at), at, Numberless);
            }
            else if (IsHoleInList(at, first, next) || IsHoleAfterMark(at, first, next) || at == first && IsNumberBeforePredicate(at, next) || IsHoleInNumber(at, first, next))
            {
                _doubts.Add(Within(first, SentenceEnd(first)), at, NoNumber);
            }
            else if (IsCommand(at, first, next))
            {
                _doubts.Add(within, at, "may be what was done, or how it was found");
            }
            else if (IsLoosePlace(at, next))
            {
                _doubts.Add([.. within.Where(i => _reading.Findings[i].Place is null)], at + 1, "may be where it is");
            }
            else if (IsStrange(at))
            {
                _doubts.Add(within, at, Unknown);
            }
            else if (IsRest(at) && StrangeBefore(first) is { } strange)
            {
                _doubts.Add(within, strange, Unknown);
            }
        }

        foreach (var aside in Enumerable.Range(first, next - first).Where(at => Is(at, WordReading.Aside) && !IsTied(at)).Take(1).Where(at => !IsLookedAt(at)))
        {
            _doubts.Add(Within(first, SentenceEnd(first)), aside, "says that it may be no finding");
        }

        foreach (var name in Enumerable.Range(first, next - first).Where(at => IsStrange(at) && ProperNames.At(_tokens, at)))
        {
            // Of whom or what the rest of the sentence speaks is open.
            _doubts.Add(Within(first, SentenceEnd(first)), name, Unknown);
        }

        if (next > first && next - first <= ShortClause && Enumerable.Range(first, next - first).All(IsStrange) && next < _tokens.Count)
        {
            _doubts.Add(Within(next + 1, Clause.End(_tokens, next + 1)), first, Unknown);
        }
    }

    private bool IsGap(int at) => text.Gaps.Contains(_tokens[at].Start);

    // A word nobody told the program about, and which is not of all talk.
    private bool IsStrange(int at) =>
        Is(at, WordReading.Unknown) && _tokens[at].Kind == TokenKind.Word && _tokens[at].Text.Length > 1
            && !Everyday.Contains(_tokens[at].Text) && !_tokens[at].Text.EndsWith("ly", StringComparison.Ordinal)
            && !SaysWhere(at) && _numbers.Unit(at) is not { Foreign: false, Doubt: null }
        || _tokens[at].Text is "we" && at > 0 && (Is(at - 1, WordReading.Name) || _tokens[at - 1].Stem is "is" or "'s");

    // "Near the manifold", "with the strobe", "like a watch". But in "the blade on the bandsaw is" it says which blade.
    private bool SaysWhere(int at) => !ProperNames.At(_tokens, at) && (at > 1 && (_tokens[at - 1].Text is "like" || at > 2 && _tokens[at - 2].Text is "like" && _tokens[at - 1].Text is "a" or "the")
        || _tokens[at].Text is "like" && at + 1 < _tokens.Count && _tokens[at + 1].Text is "a" or "the"
        || at > 1 && !(at > 2 && at + 1 < _tokens.Count && Is(at - 3, WordReading.Name) && Is(at + 1, WordReading.Tie)) && _tokens[at - 1].Text is "the" or "a" && Is(at - 2, WordReading.Small)
        && _tokens[at - 2].Text is "near" or "on" or "at" or "by" or "with" or "in" or "against" or "under" or "behind" or "from");

    // "Let me read that again, nine k", "is it open? No, nine k": what is found is told after.
    private bool IsLookedAt(int at) => _tokens[at].Text is "let" or "looking" or "checking"
        || SentenceEnd(at) is var end && end < _tokens.Count && _tokens[end].IsMark('?');

    // "On the bracket", "with a wire brush". But in "the gap at the door is" it tells which gap.
    private bool IsTied(int at)
    {
        var before = at - 1;
        while (before >= 0 && (_tokens[before].Text is "the" or "a" or "an" || Is(before, WordReading.Aside)))
        {
            before--;
        }

        var tells = before > 0 && Is(before - 1, WordReading.Name) && at + 1 < _tokens.Count && Is(at + 1, WordReading.Tie);
        return !tells && before >= 0 && Is(before, WordReading.Small) && _tokens[before].Text is "near" or "on" or "at" or "by" or "with" or "in" or "against" or "under" or "behind" or "from" or "into" or "of";
    }

    // "Insulation cracked lead six": said of a lead, or of none.
    private bool IsLoosePlace(int at, int next) =>
        Is(at, WordReading.Predicate) && at + 3 == next && Is(at + 1, WordReading.Name) && Is(at + 2, WordReading.Number);

    // "The rest" is all that was not named, so that a name not understood before it matters.
    private bool IsRest(int at) => _tokens[at].Text is "rest" or "others" or "remaining" or "else";

    private int? StrangeBefore(int at)
    {
        for (var before = at - 1; before >= Math.Max(0, at - RestReach); before--)
        {
            if (IsStrange(before) || IsNumberSound(before) && before > 0 && (Is(before - 1, WordReading.Name) || _tokens[before - 1].IsWord("and")))
            {
                return before;
            }
        }

        return null;
    }

    private bool IsNumberSound(int at) => !Is(at, WordReading.Number) && _tokens[at].Text is "to" or "too" or "for" or "won" or "ate" or "fore" or "do" or "due";

    private bool IsLonePoint(int at) =>
        !Is(at, WordReading.Number) && _tokens[at].Kind == TokenKind.Word && NumberWords.IsPoint(_tokens[at].Stem);

    // "Number run is good", "all except far", "terminal do is corroded".
    private bool IsHoleAfterMark(int at, int first, int next) =>
        at > first && (_tokens[at - 1].Text is "number" or "cylinder" or "except"
            && (_reading.Words[at] is WordReading.Unknown or WordReading.Predicate || IsNumberSound(at))
            || IsNumberSound(at) && _tokens[at].Text is "do" or "due" && Is(at - 1, WordReading.Name) && at + 1 < next);

    // "Eleven and a have", "tan and a half k", "live an point three", "off four a look".
    private bool IsHoleInNumber(int at, int first, int next)
    {
        if (Is(at, WordReading.Number))
        {
            var opens = at > first && !Is(at - 1, WordReading.Number);
            var part = NumberWords.IsPoint(_tokens[at].Stem) || _tokens[at].Stem is "half" or "a" || at + 1 < next && Is(at + 1, WordReading.Number) && NumberWords.Denominator(_tokens[at + 1].Stem) is not null;
            return opens && part && _tokens[at - 1].Stem is "and" or "an" && at - 1 > first && _reading.Words[at - 2] is WordReading.Unknown or WordReading.Predicate
                || opens && NumberWords.IsPoint(_tokens[at].Stem) && _reading.Words[at - 1] is WordReading.Unknown
                || _tokens[at].Text is "four" or "two" && at + 2 < next && _tokens[at + 1].Text is "a" && !Is(at + 1, WordReading.Number);
        }

        return _tokens[at].IsWord("and") && at > first && Is(at - 1, WordReading.Number) && at + 2 < next + 1 && at + 2 < _tokens.Count
            && _tokens[at + 1].Text is "a" && !Is(at + 1, WordReading.Number) && _reading.Words[at + 2] is WordReading.Unknown or WordReading.Tie or WordReading.Small;
    }

    // "No, eight in k", "ten and a have k"; but not "volts at the ballast" or "ten, not nine, k".
    private bool IsLoneUnit(int at, int first, int next) =>
        !Is(at, WordReading.Number) && !(Is(at, WordReading.Aside) && at > 0 && (_tokens[at - 1].Kind == TokenKind.Digits || _numbers.Numbers(at - 1).Count > 0)) && _tokens[at].Kind == TokenKind.Word && next - first > 1
        && !(at == first && Is(at + 1, WordReading.Small)) && _numbers.Unit(at) is { Foreign: false, Angle: false, Doubt: null };

    // "On run and two", "plugs when and four".
    private bool IsHoleInList(int at, int first, int next) =>
        at > first && at + 2 < next && (_reading.Words[at] is WordReading.Unknown or WordReading.Predicate || IsNumberSound(at))
        && (_tokens[at - 1].Stem is "on" or "and" or "of" or "for" || IsNumberSound(at) && Is(at - 1, WordReading.Name))
        && _tokens[at + 1].Stem is "and" or "or" && Is(at + 2, WordReading.Number)
        && (_tokens[at - 1].Stem != "and" || at - 1 > first && Is(at - 2, WordReading.Number));

    // "Too fires": two fires.
    private bool IsNumberBeforePredicate(int at, int next) =>
        _tokens[at].Text is "to" or "too" or "for" or "won" or "ate" or "fore" && at + 1 < next
        && (Is(at + 1, WordReading.Predicate) || _tokens[at + 1].Stem is "is" or "are" or "read");

    // "Clean it", "clean plug five", "clean and regapped": an order, or what was done with its ending lost. "Is cleaned":
    // with an ending too many.
    private bool IsCommand(int at, int first, int next) =>
        Is(at, WordReading.Predicate) && (_tokens[at].Text is "clean" && at + 1 < next
            && (_tokens[at + 1].Stem is "it" or "them" || at == first && Is(at + 1, WordReading.Name)
                || at + 2 < next && _tokens[at + 1].Stem is "and" && Is(at + 2, WordReading.Predicate) && _tokens[at + 2].Text.EndsWith("ed", StringComparison.Ordinal))
            || _tokens[at].Text is "cleaned" && at > first && _tokens[at - 1].Stem is "is" or "are" or "'s" or "both");

    private List<int> Within(int first, int next)
    {
        if (first >= next)
        {
            return [];
        }

        var (start, end) = (_tokens[first].Start, _tokens[next - 1].End);
        return [.. Enumerable.Range(0, _reading.Findings.Count).Where(i => _reading.Findings[i].Start < end && _reading.Findings[i].End > start)];
    }

    private List<int> LastBefore(int at) =>
        [.. Enumerable.Range(0, _reading.Findings.Count)
            .Where(i => _reading.Findings[i].Kind == FindingKind.Reading && _reading.Findings[i].End <= _tokens[at].Start).TakeLast(1)];

    private int SentenceStart(int at)
    {
        while (at > 0 && !EndsSentence(at - 1))
        {
            at--;
        }

        return at;
    }

    private int SentenceEnd(int at)
    {
        while (at < _tokens.Count && !EndsSentence(at))
        {
            at++;
        }

        return at;
    }

    private bool EndsSentence(int at) => _tokens[at].Kind == TokenKind.Mark && _tokens[at].Text[0] is '.' or '?' or '!' or ';';

    private bool Is(int at, WordReading kind) => _reading.Words[at] == kind;
}
