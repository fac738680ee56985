using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Takes back findings that have too little ground to be proposed: among many words that were not understood, a
/// part and a condition are mostly talk.</summary>
internal sealed class Groundless(NumberLookup numbers, Func<int, bool> strange)
{
    // Of a finding that names a cylinder, or a check and a unit.
    private const int MostStrange = 2;

    private const int MostStrangeVague = 1;

    // Where on a part something is, and what a part is made of.
    private static readonly HashSet<string> PartsOfParts = new(
        ("end|side|top|bottom|tip|edge|back|front|middle|center|half|part|piece|bit|inside|outside|base|face|surface|core|corner|body|skin|outer|inner|rest|"
        + "rubber|plastic|brass|metal|copper|material|stuff|coating|covering|braid|one|pair|set").Split('|'), StringComparer.Ordinal);

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

        var vague = Vague(finding) || Bare(finding);
        var words = StrangeAround(finding, ofSentence: vague && !IsDecimal(finding));
        var doubts = vague ? 1 : 0;
        return words == 0 || !OfSomethingElse(finding) && (doubts == 0 && IsPlaced(finding) ? words <= MostStrange : words + doubts <= MostStrangeVague);
    }

    // Named by its number, not as one of all.
    private bool IsPlaced(Finding finding)
    {
        if (finding.Place is null)
        {
            return finding.Bracket is not null;
        }

        var (_, at) = Opening(finding, ofSentence: false);
        for (; at < _tokens.Count && (_tokens[at].Start < finding.End || !Clause.EndsClause(_tokens[at])); at++)
        {
            if (numbers.Numbers(at).Count > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Vague(Finding finding) => finding.Doubt is { } doubt
        && (Doubts.IsVague(doubt) || Doubts.IsOneOf(doubt) && finding is { Place: null, Bracket: null });

    // "Timing, eight or ten": any number may be that.
    private bool Bare(Finding finding) => !finding.Doubt!.Contains(Doubts.BareNumber, StringComparison.Ordinal) && finding is { Kind: FindingKind.Reading, Place: null, Bracket: null } && !IsDecimal(finding)
        && !Enumerable.Range(0, _tokens.Count).Any(at => _tokens[at].Start >= finding.Start && _tokens[at].End <= finding.End && numbers.Unit(at) is not null);

    // Nobody talks in tenths without having read them off.
    private bool IsDecimal(Finding finding) => _tokens.Any(token => token.Start >= finding.Start && token.End <= finding.End
        && (token.IsWord("point") || token is { Kind: TokenKind.Digits, Lead: '.' }));

    // The first token of a finding, and of its clause or sentence.
    private (int At, int First) Opening(Finding finding, bool ofSentence)
    {
        var at = 0;
        while (at < _tokens.Count && _tokens[at].End <= finding.Start)
        {
            at++;
        }

        var first = at;
        while (first > 0 && !Ends(_tokens[first - 1], ofSentence))
        {
            first--;
        }

        return (at, first);
    }

    // "The tape on lead four came off": what is spoken of is not the lead. But "the clip end of lead four" is.
    private bool OfSomethingElse(Finding finding)
    {
        var (_, at) = Opening(finding, ofSentence: false);
        if (_tokens[at].Stem is not ("the" or "a" or "that" or "this" or "there"))
        {
            return false;
        }

        var head = at + 1;
        while (head < _tokens.Count && strange(head))
        {
            head++;
        }

        return head > at + 1 && head + 1 < _tokens.Count && !PartsOfParts.Contains(_tokens[head - 1].Stem)
            && _tokens[head].Stem is "on" or "of" or "for" or "in" or "under" or "over" or "round" or "around" or "that" or "from" or "behind" or "above" or "below";
    }

    private static bool Ends(Token token, bool sentence) =>
        Clause.EndsClause(token) && (!sentence || token.Text[0] is '.' or '!' or '?' or ';');

    private int StrangeAround(Finding finding, bool ofSentence)
    {
        var (at, first) = Opening(finding, ofSentence);
        var last = at;
        while (last < _tokens.Count && (_tokens[last].Start < finding.End || !Ends(_tokens[last], ofSentence)))
        {
            last++;
        }

        // Neighbours may be one word that was heard as two.
        return Enumerable.Range(first, last - first).Count(word => strange(word) && !(word > first && strange(word - 1)));
    }
}
