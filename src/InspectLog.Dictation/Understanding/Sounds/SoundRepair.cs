using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A text read with what was misheard restored.</summary>
/// <param name="Tokens">Its words as they were taken.</param>
/// <param name="Reading">What they say; what a restored word adds is marked.</param>
/// <param name="Gaps">Where in the text words stand that belong to a number and were not understood.</param>
internal sealed record RepairedText(IReadOnlyList<Token> Tokens, TextReading Reading, IReadOnlySet<int> Gaps);

/// <summary>Finds what misheard words were meant to be, clause by clause: takes the nearest hypothesis that stands. What it
/// adds is always doubtful, and the reason says what was heard and what it was taken for.</summary>
internal sealed class SoundRepair(SoundLookup sounds, Lexicon lexicon, Func<IReadOnlyList<Token>, TextReading> read)
{
    private const int MostHypotheses = 24;

    // Two phrases that sound alike within this cannot be told apart.
    private const double Alike = 0.08;

    private readonly Hypotheses _hypotheses = new(sounds, lexicon);
    private readonly HypothesisTrial _trial = new(sounds, lexicon, read);
    private readonly Dictionary<FindingContent, string> _doubts = [];
    private readonly HashSet<int> _gaps = [];

    /// <summary>Reads a text.</summary>
    public RepairedText Read(IReadOnlyList<Token> tokens)
    {
        var reading = read(tokens);
        for (var first = 0; first < tokens.Count;)
        {
            var next = Clause.End(tokens, first);
            var clause = new Clause(tokens, reading, first, next, new NumberGaps(sounds, lexicon, tokens, reading).In(first, next));
            if (next > first && Best(clause) is { } best)
            {
                next += best.Tokens.Count - tokens.Count;
                (tokens, reading) = (best.Tokens, best.Reading);
            }
            else
            {
                _gaps.UnionWith(clause.Gaps.Select(at => clause.Tokens[at].Start));
            }

            first = next + 1;
        }

        return new(tokens, reading with { Findings = [.. reading.Findings.Select(Marked)] }, _gaps);
    }

    private Finding Marked(Finding finding) => _doubts.TryGetValue(FindingContent.Of(finding), out var doubt)
        ? finding with { Doubt = Doubts.Join(finding.Doubt, doubt) }
        : finding;

    private Outcome? Best(Clause clause)
    {
        var (best, rival) = ((Outcome?)null, (Outcome?)null);
        foreach (var hypothesis in _hypotheses.Of(clause).Take(MostHypotheses))
        {
            if (best is not null && hypothesis.Cost - best.Hypothesis.Cost >= Alike)
            {
                break;
            }

            var outcome = _trial.Try(hypothesis, clause);
            rival ??= best is not null && outcome is not null && !outcome.Gained.SetEquals(best.Gained) ? outcome : null;
            best ??= outcome;
        }

        foreach (var content in best?.Gained ?? [])
        {
            _doubts[content] = Reason(best!.Hypothesis, rival?.Hypothesis);
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
}
