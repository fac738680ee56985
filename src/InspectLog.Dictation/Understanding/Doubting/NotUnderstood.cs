using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Marks findings beside words that were not understood, for such a word may be one that was misheard: "week
/// spark" is no plain spark, and in "weak on run and two" a cylinder is missing.</summary>
internal sealed class NotUnderstood
{
    private const string Unknown = "was not understood";
    private const string NoNumber = "stands where a number belongs";
    private const string Numberless = "stands without a number";

    // How many words back a name left out of "the rest" may stand.
    private const int RestReach = 12;

    // A clause of no more words than these that says nothing may have been the place or part of the next one.
    private const int ShortClause = 2;

    private readonly IReadOnlyList<Token> _tokens;
    private readonly TextReading _reading;
    private readonly IReadOnlyDictionary<int, string> _heardAs;
    private readonly ReadWords _words;
    private readonly NumberHoles _holes;
    private readonly Outcomes _outcomes;
    private readonly WordDoubts _doubts;

    /// <param name="text">The text as it was read.</param>
    /// <param name="heardAs">By where a word taken for another starts: what was written there.</param>
    public NotUnderstood(RepairedText text, IReadOnlyDictionary<int, string> heardAs)
    {
        (_tokens, _reading, _heardAs) = (text.Tokens, text.Reading, heardAs);
        _words = new(_tokens, _reading);
        _holes = new(_words, text.Gaps);
        _outcomes = new(_words);
        _doubts = new(_tokens, _reading.Findings);
    }

    /// <summary>The findings, those beside something not understood marked.</summary>
    public IReadOnlyList<Finding> Mark()
    {
        for (var first = 0; first < _tokens.Count;)
        {
            var next = Clause.End(_tokens, first);
            InClause(first, next);
            first = next + 1;
        }

        return new Groundless(_words.Numbers, _words.IsStrange).Without(_doubts.Marked());
    }

    private void InClause(int first, int next)
    {
        var within = Within(first, next);
        for (var at = first; at < next; at++)
        {
            if (_heardAs.TryGetValue(_tokens[at].Start, out var heard))
            {
                _doubts.Add(within, at, $"was heard as '{heard}'");
            }
            else if (_tokens[at].Text is "please" or "if" && !_outcomes.OpenedBy(at))
            {
                _doubts.Add([.. Within(_words.SentenceStart(at), _words.SentenceEnd(at)).Where(i => _reading.Findings[i].Kind == FindingKind.Action)], at, "is said of what is to be done");
            }
            else if (_holes.IsGap(at, next))
            {
                _doubts.Add(within, at, NoNumber);
            }
            else if (_holes.IsNumberless(at, first, next))
            {
                _doubts.Add(within.Count > 0 ? within : LastBefore(at), at, Numberless);
            }
            else if (_holes.IsHole(at, first, next))
            {
                _doubts.Add(Within(first, _words.SentenceEnd(first)), at, NoNumber);
            }
            else if (IsCommand(at, first, next))
            {
                _doubts.Add(within, at, "may be what was done, or how it was found");
            }
            else if (IsLoosePlace(at, next))
            {
                _doubts.Add([.. within.Where(i => _reading.Findings[i].Place is null)], at + 1, "may be where it is");
            }
            else if (_words.IsStrange(at) && !_outcomes.OpenedBy(at + 1))
            {
                _doubts.Add(within, at, Unknown);
            }
            else if (IsRest(at) && StrangeBefore(first) is { } strange)
            {
                _doubts.Add(within, strange, Unknown);
            }
        }

        foreach (var aside in Enumerable.Range(first, next - first).Where(at => _words.Is(at, WordReading.Aside) && !_words.IsTied(at)).Take(1).Where(at => !IsLookedAt(at)))
        {
            var doubted = Within(first, _words.SentenceEnd(first));
            _doubts.Add(_outcomes.OpenedBy(aside) ? doubted.Where(i => _reading.Findings[i].Kind != FindingKind.Action) : doubted, aside, "says that it may be no finding");
        }

        foreach (var name in Enumerable.Range(first, next - first).Where(at => _words.IsStrange(at) && ProperNames.At(_tokens, at)))
        {
            // Of whom or what the rest of the sentence speaks is open.
            _doubts.Add(Within(first, _words.SentenceEnd(first)), name, Unknown);
        }

        if (next > first && next - first <= ShortClause && Enumerable.Range(first, next - first).All(_words.IsStrange) && next < _tokens.Count)
        {
            _doubts.Add(Within(next + 1, Clause.End(_tokens, next + 1)), first, Unknown);
        }
    }

    // "Let me read that again, nine k", "is it open? No, nine k": what is found is told after.
    private bool IsLookedAt(int at) => _tokens[at].Text is "let" or "looking" or "checking" or "testing" or "measuring"
        || _words.SentenceEnd(at) is var end && end < _tokens.Count && _tokens[end].IsMark('?');

    // "Insulation cracked lead six": said of a lead, or of none.
    private bool IsLoosePlace(int at, int next) =>
        _words.Is(at, WordReading.Predicate) && at + 3 == next && _words.Is(at + 1, WordReading.Name) && _words.Is(at + 2, WordReading.Number);

    // "The rest" is all that was not named, so that a name not understood before it matters.
    private bool IsRest(int at) => _tokens[at].Text is "rest" or "others" or "remaining" or "else";

    private int? StrangeBefore(int at)
    {
        for (var before = at - 1; before >= Math.Max(0, at - RestReach); before--)
        {
            if (_words.IsStrange(before) || _holes.IsNumberSound(before) && before > 0 && (_words.Is(before - 1, WordReading.Name) || _tokens[before - 1].IsWord("and")))
            {
                return before;
            }
        }

        return null;
    }

    // "Clean it", "clean plug five", "clean and regapped": an order, or what was done with its ending lost. "Is cleaned":
    // with an ending too many.
    private bool IsCommand(int at, int first, int next) =>
        _words.Is(at, WordReading.Predicate) && (_tokens[at].Text is "clean" && at + 1 < next
            && (_tokens[at + 1].Stem is "it" or "them" || at == first && _words.Is(at + 1, WordReading.Name)
                || at + 2 < next && _tokens[at + 1].Stem is "and" && _words.Is(at + 2, WordReading.Predicate) && _tokens[at + 2].Text.EndsWith("ed", StringComparison.Ordinal))
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
}
