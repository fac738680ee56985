using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>The single words of what checks are called and asked: who says "standing" or "on the earth side" may leave the
/// rest of the name out. A word counts the more, the fewer checks have it.</summary>
internal sealed class LooseNames
{
    private readonly Dictionary<string, HashSet<int>> _checks = new(StringComparer.Ordinal);
    private readonly int _count;

    public LooseNames(SheetLexicon lexicon)
    {
        _count = lexicon.Checks.Count;
        foreach (var check in lexicon.Checks)
        {
            foreach (var phrase in check.Check.Spoken.Subjects.Append(check.Check.Title).Append(check.Check.ShortTitle).Append(check.Check.Question))
            {
                foreach (var token in lexicon.Language.Tokenizer.Cut(phrase).Where(token => token.Kind == TokenKind.Word && !lexicon.Language.Small.Contains(token.Text)))
                {
                    (_checks.TryGetValue(token.Stem, out var known) ? known : _checks[token.Stem] = []).Add(check.Index);
                }
            }
        }
    }

    /// <summary>How much some tokens speak for each check.</summary>
    public double[] Of(IReadOnlyList<Token> tokens, int first, int next)
    {
        var sums = new double[_count];
        for (var at = first; at < next; at++)
        {
            foreach (var check in _checks.GetValueOrDefault(tokens[at].Stem) ?? [])
            {
                sums[check] += 1.0 / _checks[tokens[at].Stem].Count;
            }
        }

        return sums;
    }
}
