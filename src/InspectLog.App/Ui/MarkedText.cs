namespace InspectLog.App.Ui;

/// <summary>Cuts a text into marked and unmarked pieces.</summary>
public static class MarkedText
{
    /// <summary>The pieces in order; together they are the text. Spans that lie outside it are cut to it, and those
    /// that overlap are joined.</summary>
    /// <param name="text">The text.</param>
    /// <param name="spans">Start, and position after the end, of each part to mark; in any order.</param>
    public static IEnumerable<TextPiece> Pieces(string text, IEnumerable<(int Start, int End)> spans)
    {
        var at = 0;
        foreach (var (start, end) in spans.Order())
        {
            var from = Math.Clamp(start, at, text.Length);
            var to = Math.Clamp(end, from, text.Length);
            if (from > at)
            {
                yield return new(text[at..from], false);
            }

            if (to > from)
            {
                yield return new(text[from..to], true);
                at = to;
            }
            else
            {
                at = from;
            }
        }

        if (at < text.Length)
        {
            yield return new(text[at..], false);
        }
    }
}

/// <summary>A piece of a text.</summary>
public readonly record struct TextPiece(string Text, bool IsMarked);
