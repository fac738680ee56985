namespace InspectLog.Dictation.Understanding.Texts;

/// <summary>What a token is made of.</summary>
internal enum TokenKind
{
    /// <summary>Letters, or a sign that is read as a word.</summary>
    Word,

    /// <summary>Figures, with a point among them or not.</summary>
    Figure,

    /// <summary>A mark that parts what is said.</summary>
    Mark,
}

/// <summary>A piece of a text.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="Text">In lower case and one spelling.</param>
/// <param name="Stem">Without a plural ending.</param>
/// <param name="Start">Where it starts in the text.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Glued">Whether no space parts it from the token before.</param>
internal sealed record Token(TokenKind Kind, string Text, string Stem, int Start, int End, bool Glued)
{
    /// <summary>Whether it is one capital letter.</summary>
    public bool Capital { get; init; }

    /// <summary>The word as a number for features.</summary>
    public int Word { get; } = WordIds.Of(Text);

    /// <summary>Whether the word has a plural ending that its stem lacks.</summary>
    public bool Plural => Kind == TokenKind.Word && Text.Length > Stem.Length && Text[^1] == 's';
}

/// <summary>Numbers that stand for words, the same in every process (FNV-1a).</summary>
internal static class WordIds
{
    public const int None = 0;
    public const int Start = 1;
    public const int End = 2;
    public const int Number = 3;
    public const int Subject = 4;
    public const int Part = 5;
    public const int Condition = 6;
    public const int Place = 7;

    public static int Of(string word)
    {
        var hash = 2166136261u;
        foreach (var letter in word)
        {
            hash = (hash ^ letter) * 16777619u;
        }

        return (int)(hash | 16u);
    }
}
