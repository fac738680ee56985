using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding;

/// <summary>Takes back findings that have too little ground to be proposed: among many words that were not understood, a
/// part and a condition are mostly talk.</summary>
internal sealed class Groundless(NumberLookup numbers, Func<int, bool> strange, Func<int, bool> names)
{
    // Of a finding that names a cylinder, or a check and a unit.
    private const int MostStrange = 2;

    private const int MostStrangeVague = 1;

    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;

    /// <summary>The findings that have ground.</summary>
    public IReadOnlyList<Finding> Without(IReadOnlyList<Finding> findings) =>
        findings.All(HasGround) ? findings : [.. findings.Where(HasGround)];

    private bool HasGround(Finding finding)
    {
        if (finding.Doubt is null)
        {
            return true;
        }

        var words = StrangeAround(finding);
        var doubts = Vague(finding) || Bare(finding) ? 1 : 0;
        return words == 0 || ((finding.Place ?? (object?)finding.Bracket) is not null && doubts == 0 ? words <= MostStrange : words + doubts <= MostStrangeVague);
    }

    private static bool Vague(Finding finding) => finding.Doubt is { } doubt
        && (doubt.Contains(" was named", StringComparison.Ordinal) || doubt.Contains("no numbers were said", StringComparison.Ordinal)
            || doubt.Contains("this may be", StringComparison.Ordinal) && finding is { Place: null, Bracket: null } || doubt.Contains("does not fit", StringComparison.Ordinal));

    // "Timing, eight or ten": any number may be that.
    private bool Bare(Finding finding) => finding is { Kind: FindingKind.Reading, Place: null, Bracket: null } && !IsDecimal(finding)
        && !Enumerable.Range(0, _tokens.Count).Any(at => _tokens[at].Start >= finding.Start && _tokens[at].End <= finding.End && numbers.Unit(at) is not null);

    // Nobody talks in tenths without having read them off.
    private bool IsDecimal(Finding finding) => _tokens.Any(token => token.Start >= finding.Start && token.End <= finding.End
        && (token.IsWord("point") || token is { Kind: TokenKind.Digits, Lead: '.' }));

    private int StrangeAround(Finding finding)
    {
        var at = 0;
        while (at < _tokens.Count && _tokens[at].End <= finding.Start)
        {
            at++;
        }

        var first = at;
        while (first > 0 && !Clause.EndsClause(_tokens[first - 1]))
        {
            first--;
        }

        var last = at;
        while (last < _tokens.Count && (_tokens[last].Start < finding.End || !Clause.EndsClause(_tokens[last])))
        {
            last++;
        }

        // Neighbours may be one word that was heard as two.
        return Enumerable.Range(first, last - first).Count(word => strange(word) && !(word > first && strange(word - 1)))
            // "Water supply", "left boot": of another kind.
            + (finding is { Kind: FindingKind.Reading, Place: null } && !IsDecimal(finding) && Enumerable.Range(first, Math.Max(0, last - first - 1)).Any(word => strange(word) && names(word + 1)) ? 1 : 0);
    }
}
