namespace InspectLog.Dictation.Understanding.Words;

/// <summary>What a token is made of.</summary>
internal enum TokenKind
{
    /// <summary>Letters, or a sign that is read as a word: °, #, Ω, %.</summary>
    Word,

    /// <summary>One group of digits. "9,850" is two groups, the second led by a comma.</summary>
    Digits,

    /// <summary>A comma, full stop or other mark that parts what is said.</summary>
    Mark,
}

/// <summary>A piece of a text with its position.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="Text">The piece in lower case; for digits the digits alone.</param>
/// <param name="Stem">The piece without a plural ending and in one spelling.</param>
/// <param name="Start">Position of its first character.</param>
/// <param name="End">Position after its last character.</param>
/// <param name="Lead">For digits: the point, comma or slash that joins them to the digits before, or that opens
/// them (".3"); else '\0'.</param>
/// <param name="Glued">Whether no space parts it from the token before.</param>
internal sealed record Token(
    TokenKind Kind, string Text, string Stem, int Start, int End, char Lead = '\0', bool Glued = false)
{
    /// <summary>Whether it was written with a capital and went on in small letters, as names are.</summary>
    public bool Capital { get; init; }

    public bool IsWord(string stem) => Kind == TokenKind.Word && Stem == stem;

    public bool IsMark(char mark) => Kind == TokenKind.Mark && Text[0] == mark;

    /// <summary>Whether it is a mark after which a new sentence begins.</summary>
    public bool EndsSentence => Kind == TokenKind.Mark && Text[0] is '.' or '?' or '!' or ';';

    /// <summary>Whether the word carries a plural ending that its stem lacks.</summary>
    public bool Plural => Kind == TokenKind.Word && Text[^1] == 's' && Stem[^1] != 's';
}
