using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Finds what misheard words were meant to be: replaces words that mean nothing to the reader by phrases of the
/// sheet that sound like them. A replacement stands only where the clause then makes a finding that nothing else in it
/// puts in doubt, and where no word of it is left unknown. A clause that says something plainly, or that speaks of a
/// plan, a question or another part, is left as it is, but for the gaps in its numbers. What a replacement adds is
/// always doubtful, and so is what stands beside a gap that nothing fills.</summary>
internal sealed class SoundRepair(SoundLookup sounds, Lexicon lexicon, Func<IReadOnlyList<Token>, TextReading> read)
{
    private const int LongestSpan = 3;
    private const int MostUnknown = 3;
    private const int MostGaps = 3;
    private const int MostHypotheses = 24;

    // Right before a number a name is expected; anywhere else, and for a word that has a meaning of its own, only what
    // sounds nearly the same counts.
    private const double Unexpected = 0.6;

    // Known words are not doubted in long talk.
    private const int LongestKnownClause = 12;

    // Where a number has to stand there are few words it can be, so that they may be farther off.
    private const double GapStrictness = 1.4;

    // Two words wrong in one clause must both be near.
    private const double MostOfPair = 0.2;

    // A phrase this long is seldom met by chance.
    private const int LongPhrase = 6;

    // Two phrases that sound alike within this cannot be told apart.
    private const double Alike = 0.08;

    // Limits the work on long texts: tokens read again for all hypotheses together, and words looked up by sound. A note
    // of some sentences stays far below.
    private const int MostTokensRead = 1000;
    private const int MostLookups = 30;

    private readonly Dictionary<FindingContent, string> _doubts = [];
    private int _tokensRead;

    private sealed record Clause(IReadOnlyList<Token> Tokens, TextReading Reading, int First, int Next, IReadOnlyList<int> Gaps, bool Plain);

    private sealed record Replacement(int First, int Next, SoundMatch Match, string Heard);

    private sealed record Hypothesis(IReadOnlyList<Replacement> Replacements)
    {
        public double Cost => Replacements.Sum(replacement => replacement.Match.Cost);

        public bool Covers(int at) => Replacements.Any(one => one.First <= at && at < one.Next);
    }

    private sealed record Outcome(Hypothesis Hypothesis, IReadOnlyList<Token> Tokens, TextReading Reading, HashSet<FindingContent> Gained);

    /// <summary>The words of a text as they were taken, and what they say, with what misheard words were taken for marked
    /// as doubtful.</summary>
    public (IReadOnlyList<Token> Tokens, TextReading Reading) Read(IReadOnlyList<Token> tokens)
    {
        var reading = read(tokens);
        for (var first = 0; first < tokens.Count;)
        {
            var next = ClauseEnd(tokens, first);
            var clause = ClauseOf(tokens, reading, first, next);
            if (next > first && Best(clause) is { } best)
            {
                next += best.Tokens.Count - tokens.Count;
                (tokens, reading) = (best.Tokens, best.Reading);
            }
            else if (clause.Gaps.Count > 0)
            {
                DoubtGaps(clause);
            }

            first = next + 1;
        }

        return (tokens, reading with
        {
            Findings = [.. reading.Findings.Select(finding => _doubts.TryGetValue(FindingContent.Of(finding), out var doubt)
                ? finding with { Doubt = Doubts.Join(finding.Doubt, doubt) }
                : finding)],
        });
    }

    private static int ClauseEnd(IReadOnlyList<Token> tokens, int at)
    {
        while (at < tokens.Count && !(tokens[at].Kind == TokenKind.Mark && tokens[at].Text[0] is not ('-' or '−')))
        {
            at++;
        }

        return at;
    }

    private Clause ClauseOf(IReadOnlyList<Token> tokens, TextReading reading, int first, int next) => new(
        tokens, reading, first, next, new NumberGaps(sounds, lexicon, tokens, reading).In(first, next),
        next > first && InClause(tokens, reading, first, next).Any(finding => finding.Doubt is null));

    private static IEnumerable<Finding> InClause(IReadOnlyList<Token> tokens, TextReading reading, int first, int next)
    {
        var (start, end) = (tokens[first].Start, tokens[next - 1].End);
        return reading.Findings.Where(finding => finding.Start < end && finding.End > start);
    }

    private void DoubtGaps(Clause clause)
    {
        var words = string.Join(" and ", clause.Gaps.Select(at => $"'{clause.Tokens[at].Text}'"));
        foreach (var finding in InClause(clause.Tokens, clause.Reading, clause.First, clause.Next))
        {
            _doubts[FindingContent.Of(finding)] = $"{words} stands where a number belongs and was not understood";
        }
    }

    private Outcome? Best(Clause clause)
    {
        var outcomes = Hypotheses(clause)
            .OrderBy(hypothesis => hypothesis.Cost)
            .Take(MostHypotheses)
            .Select(hypothesis => Try(hypothesis, clause))
            .OfType<Outcome>()
            .ToList();
        if (outcomes.Count == 0)
        {
            return null;
        }

        var best = outcomes[0];
        var rival = outcomes.Find(outcome => outcome.Hypothesis.Cost - best.Hypothesis.Cost < Alike && !outcome.Gained.SetEquals(best.Gained));
        foreach (var content in best.Gained)
        {
            _doubts[content] = Reason(best.Hypothesis, rival?.Hypothesis);
        }

        return best;
    }

    private static string Reason(Hypothesis best, Hypothesis? rival)
    {
        var taken = string.Join(" and ", best.Replacements.Select(one => $"'{one.Heard}' was taken for '{one.Match.Phrase.Text}'"));
        return rival is null
            ? $"{taken}, which sounds alike"
            : $"{taken}, but {string.Join(" and ", rival.Replacements.Select(one => $"'{one.Match.Phrase.Text}'"))} sounds as near";
    }

    private IEnumerable<Hypothesis> Hypotheses(Clause clause)
    {
        var (tokens, reading, first, next, gaps, plain) = clause;
        var all = Enumerable.Range(first, next - first).ToList();
        if (all.Exists(at => reading.Words[at] == WordReading.Aside && !gaps.Contains(at)))
        {
            return [];
        }

        if (plain)
        {
            return gaps.Count is 0 or > MostGaps ? [] : Fill(clause);
        }

        var unknown = all.FindAll(at => reading.Words[at] == WordReading.Unknown || gaps.Contains(at));
        if (unknown.Count > MostUnknown)
        {
            return [];
        }

        return unknown.Count == 0 ? OfKnownWords(clause, all)
            : Covering(unknown, [.. Spans(tokens, unknown, first, next).SelectMany(span => Replacements(tokens, span.First, span.Next, Strictness(clause, span.Next), false))])
                .Concat(gaps.Count > 0 ? Fill(clause) : []);
    }

    private static double Strictness(Clause clause, int next) =>
        next < clause.Next && clause.Reading.Words[next] == WordReading.Number ? 1 : Unexpected;

    // Numbers for the gaps in the numbers; a point that is one gap is understood once its figures are.
    private IEnumerable<Hypothesis> Fill(Clause clause)
    {
        var words = clause.Gaps.Where(at => clause.Tokens[at].Stem != "point").ToList();
        var spans = Spans(clause.Tokens, words, clause.First, clause.Next).Where(span => span.Next - span.First < LongestSpan);
        return Covering(words, [.. spans.SelectMany(span => Replacements(clause.Tokens, span.First, span.Next, GapStrictness, true))]);
    }

    private IEnumerable<Hypothesis> OfKnownWords(Clause clause, List<int> all) =>
        all.Count > LongestKnownClause || InClause(clause.Tokens, clause.Reading, clause.First, clause.Next).Any() ? []
            : all.SelectMany(at => KnownReplacements(clause, at)).Select(one => new Hypothesis([one]));

    // A name or a small word may stand for any phrase; any other word for a name, right before a number: "read three
    // is burnt".
    private IEnumerable<Replacement> KnownReplacements(Clause clause, int at)
    {
        var light = clause.Reading.Words[at] is WordReading.Small or WordReading.Name;
        var beforeNumber = at + 1 < clause.Next && clause.Reading.Words[at + 1] == WordReading.Number;
        return light || clause.Reading.Words[at] == WordReading.Tie && beforeNumber
            ? Replacements(clause.Tokens, at, at + 1, Unexpected, false).Where(one => light || lexicon.IsPlaceNoun(one.Match.Phrase.Tokens[^1].Stem))
            : [];
    }

    private static IEnumerable<Hypothesis> Covering(List<int> unknown, List<Replacement> single) =>
        single.Select(one => new Hypothesis([one])).Concat(Pairs(single).Where(pair => pair.Cost <= MostOfPair))
            .Where(hypothesis => unknown.TrueForAll(hypothesis.Covers));

    private static IEnumerable<Hypothesis> Pairs(List<Replacement> single) =>
        from one in single
        from other in single
        where one.Next <= other.First
        select new Hypothesis([one, other]);

    // Every run of words that holds an unknown one.
    private static IEnumerable<(int First, int Next)> Spans(IReadOnlyList<Token> tokens, List<int> unknown, int first, int next)
    {
        for (var from = first; from < next; from++)
        {
            for (var to = from + 1; to <= Math.Min(next, from + LongestSpan) && tokens[to - 1].Kind == TokenKind.Word; to++)
            {
                if (unknown.Exists(at => from <= at && at < to))
                {
                    yield return (from, to);
                }
            }
        }
    }

    private IEnumerable<Replacement> Replacements(IReadOnlyList<Token> tokens, int first, int next, double strictness, bool numbersOnly)
    {
        if (tokens[first].Kind != TokenKind.Word || sounds.Count >= MostLookups)
        {
            return [];
        }

        var words = Enumerable.Range(first, next - first).Select(at => tokens[at]).ToList();
        var heard = string.Join(' ', words.Select(word => word.Text));
        return sounds.Near(words, strictness, numbersOnly).Select(match => new Replacement(first, next, match, heard));
    }

    private Outcome? Try(Hypothesis hypothesis, Clause clause)
    {
        if (_tokensRead + clause.Tokens.Count > MostTokensRead)
        {
            return null;
        }

        var before = clause.Reading;
        var replaced = Replaced(clause.Tokens, hypothesis.Replacements);
        _tokensRead += replaced.Count;
        var reading = read(replaced);
        var clauseEnd = clause.Next + replaced.Count - clause.Tokens.Count;
        var known = before.Findings.Select(FindingContent.Of).ToHashSet();
        var gained = reading.Findings.Where(finding => !known.Contains(FindingContent.Of(finding))).ToList();
        return gained.Count > 0 && gained.TrueForAll(finding => finding.Doubt is null)
            && Keeps(clause, reading) && IsWhole(clause, reading, replaced, clauseEnd) && (clause.Plain || IsAnchored(clause, hypothesis, gained))
            ? new(hypothesis, replaced, reading, [.. gained.Select(FindingContent.Of)])
            : null;
    }

    // What was plain stays. Beside a gap it may change its value or place, but not what it is about, and there are as
    // many readings as before.
    private static bool Keeps(Clause clause, TextReading reading)
    {
        var contents = reading.Findings.Select(FindingContent.Of).ToHashSet();
        var beside = clause.Gaps.Count == 0 ? [] : InClause(clause.Tokens, clause.Reading, clause.First, clause.Next).ToHashSet();
        var more = clause.Plain && Readings(reading.Findings) != Readings(clause.Reading.Findings);
        return !more && clause.Reading.Findings.Where(finding => finding.Doubt is null).All(finding =>
            contents.Contains(FindingContent.Of(finding))
            || beside.Contains(finding) && contents.Any(content => content.Check == finding.Check && content.Kind == finding.Kind
                && content.Condition == finding.Condition && content.Negated == finding.Negated && content.Action == finding.Action));
    }

    private static int Readings(IReadOnlyList<Finding> findings) => findings.Count(finding => finding.Kind == FindingKind.Reading);

    private bool IsWhole(Clause clause, TextReading reading, IReadOnlyList<Token> tokens, int next) => clause.Plain
        ? new NumberGaps(sounds, lexicon, tokens, reading).In(clause.First, next).Count == 0
        : Enumerable.Range(clause.First, next - clause.First).All(at => reading.Words[at] is not (WordReading.Unknown or WordReading.Aside));

    // Something that was heard right has to speak for the finding too: a name, what is said of it, or a number where
    // that is a value or where the phrase restored is long and holds a name. For a number restored, only the name
    // of a place right before it does, or a point.
    private bool IsAnchored(Clause clause, Hypothesis hypothesis, List<Finding> gained)
    {
        var heard = Enumerable.Range(clause.First, clause.Next - clause.First)
            .Where(at => !hypothesis.Covers(at))
            .Select(at => clause.Reading.Words[at])
            .ToHashSet();
        var restored = hypothesis.Replacements.Select(one => one.Match.Phrase).ToList();
        if (gained.Exists(finding => finding.Negated) && restored.Exists(phrase => !phrase.Number && !phrase.Tokens.Any(token => lexicon.IsSubjectWord(token.Stem))))
        {
            // "Not" before a word not understood is mostly talk: two guesses at once.
            return false;
        }

        return restored.TrueForAll(phrase => phrase.Number)
            ? hypothesis.Replacements.All(one => one.First > clause.First && clause.Tokens[one.First - 1] is var before
                && (lexicon.IsPlaceNoun(before.Stem) || before.IsWord("point")))
            : heard.Contains(WordReading.Name) || heard.Contains(WordReading.Predicate)
                || heard.Contains(WordReading.Number) && (gained.Exists(finding => finding.Kind == FindingKind.Reading)
                    || restored.Exists(phrase => phrase.Sounds[0].Length >= LongPhrase && phrase.Tokens.Any(token => lexicon.IsSubjectWord(token.Stem))));
    }

    // The words of the phrase, standing where the words heard stood.
    private static List<Token> Replaced(IReadOnlyList<Token> tokens, IReadOnlyList<Replacement> replacements)
    {
        var replaced = new List<Token>(tokens.Count);
        var at = 0;
        foreach (var one in replacements)
        {
            replaced.AddRange(Enumerable.Range(at, one.First - at).Select(i => tokens[i]));
            var (start, end) = (tokens[one.First].Start, tokens[one.Next - 1].End);
            replaced.AddRange(one.Match.Phrase.Tokens.Select(token => token with { Start = start, End = end, Glued = false }));
            at = one.Next;
        }

        replaced.AddRange(Enumerable.Range(at, tokens.Count - at).Select(i => tokens[i]));
        return replaced;
    }
}
