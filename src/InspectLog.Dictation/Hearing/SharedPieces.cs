namespace InspectLog.Dictation.Hearing;

/// <summary>Which tokens two hearings of one clip share, in order: their longest common subsequence.</summary>
internal static class SharedPieces
{
    /// <summary>For each of <paramref name="pieces"/>, whether <paramref name="other"/> has it too. Case does not matter.</summary>
    public static bool[] Of(IReadOnlyList<TextPiece> pieces, IReadOnlyList<TextPiece> other)
    {
        var longest = Lengths(pieces, other);
        var shared = new bool[pieces.Count];
        for (var (i, j) = (0, 0); i < pieces.Count && j < other.Count;)
        {
            if (Same(pieces[i], other[j]))
            {
                shared[i++] = true;
                j++;
            }
            else if (longest[i + 1, j] >= longest[i, j + 1])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return shared;
    }

    /// <summary>Length of the longest common subsequence of what is left from each pair of places on.</summary>
    private static int[,] Lengths(IReadOnlyList<TextPiece> pieces, IReadOnlyList<TextPiece> other)
    {
        var longest = new int[pieces.Count + 1, other.Count + 1];
        for (var i = pieces.Count - 1; i >= 0; i--)
        {
            for (var j = other.Count - 1; j >= 0; j--)
            {
                longest[i, j] = Same(pieces[i], other[j])
                    ? longest[i + 1, j + 1] + 1
                    : Math.Max(longest[i + 1, j], longest[i, j + 1]);
            }
        }

        return longest;
    }

    private static bool Same(TextPiece one, TextPiece other) =>
        string.Equals(one.Text.Trim(), other.Text.Trim(), StringComparison.OrdinalIgnoreCase);
}
