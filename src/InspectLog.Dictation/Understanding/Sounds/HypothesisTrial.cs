using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>What a hypothesis makes of a text.</summary>
/// <param name="Hypothesis">The hypothesis.</param>
/// <param name="Tokens">The tokens with its phrases in place.</param>
/// <param name="Reading">What they say.</param>
/// <param name="Gained">The findings there were not before.</param>
internal sealed record Outcome(Hypothesis Hypothesis, IReadOnlyList<Token> Tokens, TextReading Reading, HashSet<FindingContent> Gained);

/// <summary>Tries hypotheses by reading the text with them. One stands only where the clause then makes a finding that
/// nothing else in it puts in doubt, where no word of the clause is left unknown, and where what was plain stays.</summary>
internal sealed class HypothesisTrial(SoundLookup sounds, Lexicon lexicon, Func<IReadOnlyList<Token>, TextReading> read)
{
    // A phrase this long is seldom met by chance.
    private const int LongPhrase = 6;

    // Limits the work on long texts: tokens read again for all hypotheses together. A note of some sentences stays far
    // below.
    private const int MostTokensRead = 600;

    private (Clause Clause, ClauseWindow? Window)? _window;
    private int _tokensRead;

    /// <summary>What a hypothesis makes of a clause; null where it does not stand, or where too much was read already.
    /// </summary>
    public Outcome? Try(Hypothesis hypothesis, Clause clause)
    {
        if (_tokensRead >= MostTokensRead)
        {
            return null;
        }

        var window = Window(clause);
        return window is null || TryIn(window.Shifted(hypothesis), window.Clause) is not null ? TryIn(hypothesis, clause) : null;
    }

    private ClauseWindow? Window(Clause clause)
    {
        if (_window is not { } last || !ReferenceEquals(last.Clause, clause))
        {
            _window = last = (clause, ClauseWindow.Of(clause, ReadAgain));
        }

        return last.Window;
    }

    private TextReading ReadAgain(IReadOnlyList<Token> tokens)
    {
        _tokensRead += tokens.Count;
        return read(tokens);
    }

    private Outcome? TryIn(Hypothesis hypothesis, Clause clause)
    {
        if (_tokensRead + clause.Tokens.Count > MostTokensRead)
        {
            return null;
        }

        var replaced = hypothesis.Apply(clause.Tokens);
        var reading = ReadAgain(replaced);
        var known = clause.Reading.Findings.Select(FindingContent.Of).ToHashSet();
        var gained = reading.Findings.Where(finding => !known.Contains(FindingContent.Of(finding))).ToList();
        return gained.Count > 0 && gained.TrueForAll(finding => finding.Doubt is null || Doubts.IsTakenAsAll(finding.Doubt))
            && Keeps(clause, reading) && IsWhole(clause, reading, replaced)
            && (clause.IsPlain || IsAnchored(clause, hypothesis, gained))
            ? new(hypothesis, replaced, reading, [.. gained.Select(FindingContent.Of)])
            : null;
    }

    // What was plain stays. Beside a gap it may change its value or place, but not what it is about, and there are as
    // many readings as before.
    private static bool Keeps(Clause clause, TextReading reading)
    {
        var contents = reading.Findings.Select(FindingContent.Of).ToHashSet();
        var beside = clause.Gaps.Count == 0 ? [] : clause.Findings.ToHashSet();
        var more = clause.IsPlain && Readings(reading.Findings) != Readings(clause.Reading.Findings);
        return !more && clause.Reading.Findings.Where(finding => finding.Doubt is null).All(finding =>
            contents.Contains(FindingContent.Of(finding))
            || beside.Contains(finding) && contents.Any(content => content.Check == finding.Check && content.Kind == finding.Kind
                && content.Condition == finding.Condition && content.Negated == finding.Negated && content.Action == finding.Action));
    }

    private static int Readings(IReadOnlyList<Finding> findings) => findings.Count(finding => finding.Kind == FindingKind.Reading);

    private bool IsWhole(Clause clause, TextReading reading, IReadOnlyList<Token> tokens)
    {
        var next = clause.Next + tokens.Count - clause.Tokens.Count;
        return clause.IsPlain
            ? new NumberGaps(sounds, lexicon, tokens, reading).In(clause.First, next).Count == 0
            : Enumerable.Range(clause.First, next - clause.First).All(at => reading.Words[at] is not (WordReading.Unknown or WordReading.Aside));
    }

    // Something that was heard right has to speak for the finding too: a name, what is said of it, or a number where
    // that is a value or where the phrase restored is long and holds a name. For a number restored, only the name
    // of a place right before it does, or a point, or "on" where what was said lacks its place.
    private bool IsAnchored(Clause clause, Hypothesis hypothesis, List<Finding> gained)
    {
        var restored = hypothesis.Replacements.Select(one => one.Match.Phrase).ToList();
        if (hypothesis.Replacements.Any(one => !one.Match.Phrase.Number && !IsName(one.Match.Phrase) && one.First > clause.First && (clause.Tokens[one.First - 1].IsWord("the") || clause.Tokens[one.First].Text is "the" or "a" && one.Next > one.First + 1)))
        {
            // "In the loft" names something; "in the rust" says nothing of how it is.
            return false;
        }

        if (gained.Exists(finding => finding.Negated) && restored.Exists(phrase => !phrase.Number && !Names(phrase)))
        {
            // "Not" before a word not understood is mostly talk: two guesses at once.
            return false;
        }

        if (restored.TrueForAll(phrase => phrase.Number))
        {
            return hypothesis.Replacements.All(one => one.First > clause.First && clause.Tokens[one.First - 1] is var before
                && (lexicon.IsPlaceNoun(before.Stem) || before.IsWord("point")
                    || before.IsWord("on") && clause.Findings.Any(finding => finding.Place is null)));
        }

        var heard = Enumerable.Range(clause.First, clause.Next - clause.First)
            .Where(at => !hypothesis.Covers(at))
            .Select(at => clause.Reading.Words[at])
            .ToHashSet();
        return heard.Contains(WordReading.Name) || heard.Contains(WordReading.Predicate)
            || heard.Contains(WordReading.Number) && (gained.Exists(finding => finding.Kind == FindingKind.Reading)
                || restored.Exists(phrase => phrase.Sounds[0].Length >= LongPhrase && Names(phrase)));
    }

    private bool IsName(SoundingPhrase phrase) => lexicon.Match(phrase.Tokens, 0) is { } match && match.Meanings.Any(term => term.Subject);

    private bool Names(SoundingPhrase phrase) => phrase.Tokens.Any(token => lexicon.IsSubjectWord(token.Stem));
}
