namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Letters with points between them, which are one word: "B.T.D.C.", "p.s.i.".</summary>
internal static class Acronyms
{
    /// <summary>The word, and where it ends in the text; nothing where no such word starts.</summary>
    public static (string Word, int End)? At(string text, int at)
    {
        var end = at;
        var letters = "";
        while (end + 1 < text.Length && char.IsLetter(text[end]) && text[end + 1] == '.')
        {
            letters += char.ToLowerInvariant(text[end]);
            end += 2;
        }

        if (letters.Length < 2)
        {
            return null;
        }

        if (end < text.Length && char.IsLetter(text[end]) && (end + 1 == text.Length || !char.IsLetter(text[end + 1])))
        {
            letters += char.ToLowerInvariant(text[end++]);
        }

        return (letters, end);
    }
}
