namespace InspectLog.Paper.Layout;

/// <summary>Letters that are read from right to left, where they stand within a line that is read from left to right. What the
/// Unicode bidirectional algorithm does for plain words; numbers and brackets within them stay as they are.</summary>
internal static class Turned
{
    /// <summary>Whether a letter is of a script that is written from right to left: Hebrew to Arabic Extended, and the forms of
    /// both.</summary>
    public static bool IsTurned(char letter) => letter is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE');

    /// <summary>Where each piece of a line begins, in their order of reading.</summary>
    public static double[] PlacesOf(List<Piece> pieces)
    {
        var places = new double[pieces.Count];
        var x = 0.0;
        for (var at = 0; at < pieces.Count;)
        {
            var end = EndOfTurned(pieces, at);
            if (end == at)
            {
                places[at] = x;
                x += pieces[at++].Width;
                continue;
            }

            for (var one = end - 1; one >= at; one--)
            {
                places[one] = x;
                x += pieces[one].Width;
            }

            at = end;
        }

        return places;
    }

    // Words with the spaces between them, but not the space after the last.
    private static int EndOfTurned(List<Piece> pieces, int start)
    {
        var end = start;
        for (var at = start; at < pieces.Count && (pieces[at].IsTurned || (pieces[at].IsSpace && end > start)); at++)
        {
            end = pieces[at].IsTurned ? at + 1 : end;
        }

        return end;
    }
}
