using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A clause of a text, from one mark to the next, as it was read.</summary>
/// <param name="Tokens">The tokens of the whole text.</param>
/// <param name="Reading">What the whole text says.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after its last.</param>
/// <param name="Gaps">Its tokens that stand where a number belongs and are none.</param>
internal sealed record Clause(IReadOnlyList<Token> Tokens, TextReading Reading, int First, int Next, IReadOnlyList<int> Gaps)
{
    /// <summary>The findings that come from words of the clause.</summary>
    public IReadOnlyList<Finding> Findings { get; } = First < Next ? FindingsIn(Tokens, Reading, First, Next) : [];

    /// <summary>Whether it says something without a doubt.</summary>
    public bool IsPlain => Findings.Any(finding => finding.Doubt is null);

    /// <summary>Where the clause that starts at a token ends.</summary>
    public static int End(IReadOnlyList<Token> tokens, int at)
    {
        while (at < tokens.Count && !EndsClause(tokens[at]))
        {
            at++;
        }

        return at;
    }

    /// <summary>Whether a token parts clauses. A minus or a dash between figures does not.</summary>
    public static bool EndsClause(Token token) => token.Kind == TokenKind.Mark && token.Text[0] is not ('-' or '−');

    private static List<Finding> FindingsIn(IReadOnlyList<Token> tokens, TextReading reading, int first, int next)
    {
        var (start, end) = (tokens[first].Start, tokens[next - 1].End);
        return [.. reading.Findings.Where(finding => finding.Start < end && finding.End > start)];
    }
}
