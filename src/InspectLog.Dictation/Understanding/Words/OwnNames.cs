using InspectLog.Checks;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Puts the sheet's own name of a check where a workshop's name for it was said, so that the rest of the
/// reader knows nothing of own names and a text without one is read as ever.</summary>
internal sealed class OwnNames
{
    private readonly PhraseTable<string> _names = new();

    public OwnNames(CheckSheet sheet, IEnumerable<OwnWord> words)
    {
        foreach (var word in words.Where(word => word.Condition is null))
        {
            if (sheet.Find(word.Check) is { } check)
            {
                _names.Add(word.Phrase, SheetName(check));
            }
        }
    }

    /// <summary>How many tokens the own name takes that starts at a token; 0 where none does.</summary>
    public int Length(IReadOnlyList<Token> tokens, int at) => _names.Match(tokens, at)?.Length ?? 0;

    /// <summary>The tokens with the sheet's names, each standing where the own name stood in the text.</summary>
    public IReadOnlyList<Token> Replace(IReadOnlyList<Token> tokens)
    {
        if (_names.IsEmpty)
        {
            return tokens;
        }

        var replaced = new List<Token>(tokens.Count);
        for (var at = 0; at < tokens.Count;)
        {
            if (_names.Match(tokens, at) is { } own)
            {
                replaced.AddRange(Standing(own.Meanings[0], tokens[at], tokens[at + own.Length - 1]));
                at += own.Length;
            }
            else
            {
                replaced.Add(tokens[at++]);
            }
        }

        return replaced;
    }

    // The check that actions on a counted part are recorded on stands for the part: its name counts as the part does.
    private static string SheetName(Check check) =>
        check is { PerCylinder: true, Spoken: { MainForActions: true, Parts: [var part, ..] } } ? part
        : check.Spoken.Subjects.Concat(check.Spoken.Parts).First();

    private static IEnumerable<Token> Standing(string name, Token first, Token last)
    {
        var said = Tokenizer.Cut(last.Plural ? name + "s" : name);
        return said.Select(token => token with { Start = first.Start, End = last.End, Glued = false });
    }
}
