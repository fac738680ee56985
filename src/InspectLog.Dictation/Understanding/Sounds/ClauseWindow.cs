using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A clause of a long text with the sentences around it only, so that trying what its words may have been does
/// not take reading the whole text each time.</summary>
internal sealed class ClauseWindow
{
    // About three sentences: what a clause takes up from those before it stands mostly in the last one.
    private const int Before = 40;
    private const int After = 20;

    private readonly int _start;

    private ClauseWindow(Clause clause, int start) => (Clause, _start) = (clause, start);

    /// <summary>The clause as it is read there.</summary>
    public Clause Clause { get; }

    /// <summary>The window of a clause; null where the text is short anyway.</summary>
    public static ClauseWindow? Of(Clause clause, Func<IReadOnlyList<Token>, TextReading> read)
    {
        if (clause.Tokens.Count <= 2 * (Before + After))
        {
            return null;
        }

        var start = Start(clause.Tokens, clause.First);
        List<Token> tokens = [.. clause.Tokens.Take(Math.Min(clause.Tokens.Count, clause.Next + After)).Skip(start)];
        return new(new(tokens, read(tokens), clause.First - start, clause.Next - start, [.. clause.Gaps.Select(at => at - start)]), start);
    }

    /// <summary>A hypothesis for the clause in the whole text, for the clause in the window.</summary>
    public Hypothesis Shifted(Hypothesis hypothesis) =>
        new([.. hypothesis.Replacements.Select(one => one with { First = one.First - _start, Next = one.Next - _start })]);

    // The first sentence that begins within reach, or as far back as is allowed where there is none.
    private static int Start(IReadOnlyList<Token> tokens, int first)
    {
        var reach = Math.Max(0, first - Before);
        var start = reach;
        while (start > 0 && start < first && !tokens[start - 1].EndsSentence)
        {
            start++;
        }

        return start < first ? start : reach;
    }
}
