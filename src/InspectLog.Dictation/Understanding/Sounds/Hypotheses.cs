using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Thinks of what may have been said in a clause whose words mean nothing to the reader: phrases that sound like
/// them. A clause that says something plainly, or that speaks of a plan, a question or another part, is left as it is,
/// but for the gaps in its numbers.</summary>
internal sealed class Hypotheses(SoundLookup sounds, Lexicon lexicon)
{
    private const int LongestSpan = 3;
    private const int MostUnknown = 3;
    private const int MostGaps = 3;

    // Anywhere else than where the rest of the clause calls for one, only what sounds nearly the same counts.
    private const double Unexpected = 0.6;

    // Where a number has to stand there are few words it can be, so that they may be farther off.
    private const double GapStrictness = 1.4;

    // Known words are not doubted in long talk.
    private const int LongestKnownClause = 12;

    // Where no number was heard only in a few words.
    private const int LongestBareClause = 4;

    // Two words wrong in one clause must both be near.
    private const double MostOfPair = 0.2;

    // Limits the work on long texts: words looked up by sound. A note of some sentences stays far below.
    private const int MostLookups = 30;

    /// <summary>The hypotheses for a clause, the nearest first.</summary>
    public IEnumerable<Hypothesis> Of(Clause clause) => Any(clause).OrderBy(hypothesis => hypothesis.Cost);

    private IEnumerable<Hypothesis> Any(Clause clause)
    {
        var (tokens, reading, first, next, gaps) = clause;
        var all = Enumerable.Range(first, next - first).ToList();
        if (all.Exists(at => reading.Words[at] == WordReading.Aside && !gaps.Contains(at)))
        {
            return [];
        }

        if (clause.IsPlain)
        {
            return gaps.Count is 0 or > MostGaps ? [] : Fill(clause);
        }

        var unknown = all.FindAll(at => reading.Words[at] == WordReading.Unknown || gaps.Contains(at));
        if (unknown.Count > MostUnknown)
        {
            return [];
        }

        return unknown.Count == 0 ? OfKnownWords(clause, all)
            : Covering(unknown, [.. Spans(tokens, unknown, first, next).SelectMany(span => Replacements(clause, span.First, span.Next))])
                .Concat(gaps.Count > 0 ? Fill(clause) : []);
    }

    private IEnumerable<Replacement> Replacements(Clause clause, int first, int next)
    {
        if (next < clause.Next && clause.Reading.Words[next] == WordReading.Number)
        {
            // Right before a number a name is expected.
            return Replacements(clause.Tokens, first, next, 1, false);
        }

        return Expected(clause, first, next) is { } kind
            ? Replacements(clause.Tokens, first, next, 1, false).Where(one => Means(one.Match.Phrase, kind) || IsNearAnyhow(one.Match))
            : Replacements(clause.Tokens, first, next, Unexpected, false);
    }

    // Of a name, a number and what is said of them, where two were heard beside some words these may be the third.
    private static WordReading? Expected(Clause clause, int first, int next)
    {
        WordReading[] kinds = [WordReading.Name, WordReading.Number, WordReading.Predicate];
        var heard = Enumerable.Range(clause.First, clause.Next - clause.First).Where(at => at < first || at >= next)
            .Select(at => clause.Reading.Words[at]).ToHashSet();
        List<WordReading> missing = [.. kinds.Where(kind => !heard.Contains(kind))];
        return missing is [var only] ? only : null;
    }

    private bool Means(SoundingPhrase phrase, WordReading kind) => kind == WordReading.Number
        ? phrase.Number
        : lexicon.Match(phrase.Tokens, 0) is { } match && match.Length == phrase.Tokens.Count
            && match.Meanings.Any(term => kind == WordReading.Name ? term.Subject : term.Condition is not null || term.Action is not null);

    private static bool IsNearAnyhow(SoundMatch match) => match.Cost <= Unexpected * SoundThreshold.For(match.Phrase.Sounds[0].Length);

    // Numbers for the gaps in the numbers; a point that is one gap is understood once its figures are.
    private IEnumerable<Hypothesis> Fill(Clause clause)
    {
        var words = clause.Gaps.Where(at => clause.Tokens[at].Stem != "point").ToList();
        var spans = Spans(clause.Tokens, words, clause.First, clause.Next).Where(span => span.Next - span.First < LongestSpan);
        return Covering(words, [.. spans.SelectMany(span => Replacements(clause.Tokens, span.First, span.Next, GapStrictness, true))]);
    }

    private IEnumerable<Hypothesis> OfKnownWords(Clause clause, List<int> all) =>
        all.Count > LongestKnownClause || clause.Findings.Count > 0 || all.Count > LongestBareClause && !all.Exists(at => clause.Reading.Words[at] == WordReading.Number) ? []
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
        single.Select(one => new Hypothesis([one])).Concat(Pairs(single))
            .Where(hypothesis => unknown.TrueForAll(hypothesis.Covers));

    private static IEnumerable<Hypothesis> Pairs(List<Replacement> single) =>
        from one in single
        from other in single
        where one.Next <= other.First && one.Match.Cost + other.Match.Cost <= MostOfPair
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

        var words = tokens.Skip(first).Take(next - first).ToList();
        var heard = string.Join(' ', words.Select(word => word.Text));
        return sounds.Near(words, strictness, numbersOnly).Select(match => new Replacement(first, next, match, heard));
    }
}
