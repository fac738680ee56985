namespace InspectLog.Dictation.Hearing;

/// <summary>Joins the model's tokens into words.</summary>
internal static class WordJoiner
{
    /// <summary>The words of a clip in order, times in seconds from the clip's start. Positions in the text are not known yet.</summary>
    public static IReadOnlyList<HeardWord> Join(DecodedClip clip)
    {
        var words = clip.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return [];

        var groups = Group(clip.Pieces);

        // A letter can be split between tokens (the Greek omega is two bytes), so the text of the tokens cannot be
        // trusted, but where words begin can. Should the counts differ, every word gets the times of the whole clip.
        return groups.Count == words.Length
            ? [.. words.Zip(groups, ToWord)]
            : [.. words.Select(word => ToWord(word, clip.Pieces))];
    }

    private static List<List<TextPiece>> Group(IReadOnlyList<TextPiece> pieces)
    {
        var groups = new List<List<TextPiece>>();
        foreach (var piece in pieces)
        {
            if (groups.Count == 0 || char.IsWhiteSpace(piece.Text[0]))
                groups.Add([]);
            groups[^1].Add(piece);
        }

        groups.RemoveAll(group => group.All(piece => string.IsNullOrWhiteSpace(piece.Text)));
        return groups;
    }

    private static HeardWord ToWord(string text, IReadOnlyList<TextPiece> pieces) => pieces.Count == 0
        ? new HeardWord(text, 0, 0, 0, 0)
        : new HeardWord(text, pieces.Min(piece => piece.Start), pieces.Max(piece => piece.End), pieces.Min(piece => piece.Probability), 0);
}
