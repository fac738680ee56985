using System.Globalization;
using InspectLog.Paper.Blocks;
using InspectLog.Paper.Drawing;

namespace InspectLog.Paper.Layout;

/// <summary>Breaks texts into lines: after spaces and within hyphened words, and anywhere within a word that is broader than a
/// line.</summary>
/// <param name="letters">Their widths.</param>
/// <param name="width">How broad a line may be, points.</param>
internal sealed class LineBreaker(Letters letters, double width)
{
    private readonly List<TextLine> _lines = [];
    private readonly List<Piece> _pieces = [];
    private double _filled;

    /// <summary>After how many pieces the line may end; none where it may not yet.</summary>
    private int _mayEndAfter;

    /// <summary>The lines of a text; one without words where it has none.</summary>
    /// <param name="words">The text.</param>
    /// <param name="look">How it looks where it does not say otherwise.</param>
    public IReadOnlyList<TextLine> Lines(IReadOnlyList<Inline> words, RunLook look)
    {
        foreach (var piece in words.SelectMany(one => Pieces(one, look)))
        {
            Take(piece);
        }

        if (_pieces.Count > 0 || _lines.Count == 0)
        {
            End(_pieces.Count);
        }

        return _lines;
    }

    private void Take(Piece piece)
    {
        if (piece.Words == "\n")
        {
            End(_pieces.Count);
            return;
        }

        if (!piece.IsSpace && _filled + piece.Width > width + 0.01 && _pieces.Count > 0)
        {
            End(_mayEndAfter > 0 ? _mayEndAfter : _pieces.Count);
        }

        if (_pieces is [.., { Words: [var before] }, { Words: "-" }] && char.IsLetter(before) && piece.Words.Length > 0 && char.IsLetter(piece.Words[0]))
        {
            _mayEndAfter = _pieces.Count;
        }

        _pieces.Add(piece);
        _filled += piece.Width;
        _mayEndAfter = piece.IsSpace ? _pieces.Count : _mayEndAfter;
    }

    private void End(int count)
    {
        _lines.Add(LineOf(_pieces[..count]));
        _pieces.RemoveRange(0, count);
        _filled = _pieces.Sum(piece => piece.Width);
        _mayEndAfter = 0;
    }

    private static TextLine LineOf(List<Piece> pieces)
    {
        var runs = new List<Run>();
        var end = 0.0;
        foreach (var (piece, x) in pieces.Zip(Turned.PlacesOf(pieces)))
        {
            if (!piece.IsTurned && piece.Mark is null && runs is [.., { Mark: null } last] && last.Look == piece.Look && Math.Abs(end - x) < 0.001)
            {
                runs[^1] = last with { Words = last.Words + piece.Words };
            }
            else
            {
                runs.Add(new(x, piece.Words, piece.Look, piece.Mark));
            }

            end = piece.IsTurned ? double.NaN : x + piece.Width;
        }

        return new(runs, pieces.Sum(piece => piece.Width) - pieces.AsEnumerable().Reverse().TakeWhile(piece => piece.IsSpace).Sum(piece => piece.Width));
    }

    private IEnumerable<Piece> Pieces(Inline one, RunLook look)
    {
        if (one is Inline.Mark mark)
        {
            yield return new("", look, look.Size * 1.15, mark.Drawing);
            yield break;
        }

        var text = (Inline.Text)one;
        var own = new RunLook(look.Size * text.Scale, look.IsBold || text.IsBold, text.Ink ?? look.Ink);
        var elements = StringInfo.GetTextElementEnumerator(letters.Shown(text.Words));
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            yield return new(element, own, element == "\n" ? 0 : letters.WidthOf(element, own.IsBold) * own.Size, null);
        }
    }
}

/// <summary>What is never parted: a letter with what stands above it, or a mark.</summary>
internal sealed record Piece(string Words, RunLook Look, double Width, VectorDrawing? Mark)
{
    /// <summary>Whether a line may end after it.</summary>
    public bool IsSpace => Words == " ";

    /// <summary>Whether it is read from right to left.</summary>
    public bool IsTurned => Words.Length > 0 && Turned.IsTurned(Words[0]);
}
