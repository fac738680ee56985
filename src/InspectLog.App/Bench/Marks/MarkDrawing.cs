using System.Globalization;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench.Marks;

/// <summary>How a mark is drawn over a photo, in units of a drawing <see cref="Width"/> wide. The script <c>mark-shapes.js</c> draws
/// the same while marks are made. Pure.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Height">Height of the drawing.</param>
public sealed record MarkDrawing(PhotoMark Mark, double Height)
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 1000;

    /// <summary>Widths of a line's light edge, its dark edge and its core: one of them is seen on every ground.</summary>
    public static readonly IReadOnlyList<(string Colour, int Width)> Strokes = [("#fff", 19), ("#111", 15), ("#fd0", 7)];

    /// <summary>From one line of words to the next.</summary>
    private const double LineHeight = 48;

    private const int LineLength = 24;
    private const double Tip = 60;
    private const double Tick = 26;

    /// <summary>Height of the drawing over a photo.</summary>
    public static double HeightOf(PhotoKept photo) => Width * photo.Height / photo.Width;

    /// <summary>The path of its lines; empty for words alone.</summary>
    public string Path => Mark.Shape switch
    {
        MarkShape.Arrow => $"{Line(At(0), At(1))}{Head(At(0), At(1))}",
        MarkShape.Ring => Ring(At(0), At(1)),
        MarkShape.Line => string.Concat(Mark.Points.Select((_, i) => $"{(i == 0 ? "M" : "L")}{Pair(At(i))}")),
        MarkShape.Measure => $"{Line(At(0), At(1))}{Across(At(0), At(1))}{Across(At(1), At(0))}{Known}",
        _ => "",
    };

    /// <summary>Its words, line by line.</summary>
    public IReadOnlyList<string> Words =>
        [.. Wrapped(Mark.Text ?? ""), .. Mark.Measured is { } measured ? [MarkWords.Length(measured)] : Array.Empty<string>()];

    /// <summary>Where its words stand: the middle or an end of the first line, by its baseline.</summary>
    public (double X, double Y, string Anchor) Label
    {
        get
        {
            var (x, y) = Mark.Shape switch
            {
                MarkShape.Arrow => Beyond(At(1), At(0)),
                MarkShape.Ring => ((At(0).X + At(1).X) / 2, Math.Max(At(0).Y, At(1).Y) + LineHeight),
                MarkShape.Measure => ((At(0).X + At(1).X) / 2, ((At(0).Y + At(1).Y) / 2) + LineHeight + Tick),
                MarkShape.Line => (At(0).X, At(0).Y + LineHeight),
                _ => (At(0).X, At(0).Y + (LineHeight / 3)),
            };
            var anchor = x < Width / 3 ? "start" : x > Width * 2 / 3 ? "end" : "middle";
            return (Math.Clamp(x, 16, Width - 16), Math.Clamp(y, LineHeight, Math.Max(LineHeight, Height - 16 - (LineHeight * (Words.Count - 1)))), anchor);
        }
    }

    /// <summary>The baseline of a line of its words.</summary>
    public double Baseline(int line) => Label.Y + (line * LineHeight);

    /// <summary>The ends of the known length; the corners of a rectangle are left to the words.</summary>
    private string Known => Mark.Measured?.Reference is [var from, var to] ? $"{Across(Of(from), Of(to))}{Across(Of(to), Of(from))}" : "";

    private (double X, double Y) At(int point) => Of(Mark.Points[point]);

    private (double X, double Y) Of(MarkPoint point) => (point.X * Width, point.Y * Height);

    private static string Line((double X, double Y) from, (double X, double Y) to) => $"M{Pair(from)}L{Pair(to)}";

    private static string Head((double X, double Y) tail, (double X, double Y) tip)
    {
        var way = Math.Atan2(tail.Y - tip.Y, tail.X - tip.X);
        var length = Math.Min(Tip, Math.Max(24, double.Hypot(tail.X - tip.X, tail.Y - tip.Y) / 2));
        (double X, double Y) Side(double turn) => (tip.X + (length * Math.Cos(way + turn)), tip.Y + (length * Math.Sin(way + turn)));
        return $"M{Pair(Side(0.5))}L{Pair(tip)}L{Pair(Side(-0.5))}";
    }

    private static string Ring((double X, double Y) from, (double X, double Y) to)
    {
        var (across, down) = (Math.Max(14, Math.Abs(to.X - from.X) / 2), Math.Max(14, Math.Abs(to.Y - from.Y) / 2));
        var (x, y) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        return string.Create(CultureInfo.InvariantCulture, $"M{x - across:0.#} {y:0.#}a{across:0.#} {down:0.#} 0 1 0 {2 * across:0.#} 0a{across:0.#} {down:0.#} 0 1 0 {-2 * across:0.#} 0");
    }

    private static string Across((double X, double Y) end, (double X, double Y) other)
    {
        var length = Math.Max(1, double.Hypot(other.X - end.X, other.Y - end.Y));
        var (x, y) = (Tick * (other.Y - end.Y) / length, Tick * (end.X - other.X) / length);
        return Line((end.X - x, end.Y - y), (end.X + x, end.Y + y));
    }

    /// <summary>A little beyond an arrow's tail, away from its tip.</summary>
    private static (double X, double Y) Beyond((double X, double Y) tip, (double X, double Y) tail) =>
        (tail.X, tail.Y >= tip.Y ? tail.Y + LineHeight : tail.Y - (LineHeight / 2));

    private static List<string> Wrapped(string text)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && lines[^1].Length + 1 + word.Length <= LineLength)
            {
                lines[^1] += " " + word;
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }

    private static string Pair((double X, double Y) at) => string.Create(CultureInfo.InvariantCulture, $"{at.X:0.#} {at.Y:0.#}");
}
