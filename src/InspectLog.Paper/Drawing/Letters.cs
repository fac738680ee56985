using System.Globalization;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace InspectLog.Paper.Drawing;

/// <summary>How broad letters are, and which there are. Of one document at a time.</summary>
internal sealed class Letters
{
    private const double Em = 1000;

    /// <summary>Stands for a letter that the fonts have not.</summary>
    private static readonly Rune Unknown = new(0xFFFD);

    private readonly XGraphics _measure =
        XGraphics.CreateMeasureContext(new XSize(Em, Em), XGraphicsUnit.Point, XPageDirection.Downwards);

    private readonly XFont _regular = PaperFonts.Of(Em, isBold: false);
    private readonly XFont _bold = PaperFonts.Of(Em, isBold: true);
    private readonly Dictionary<(Rune Letter, bool IsBold), double> _widths = [];
    private readonly Dictionary<Rune, bool> _known = [];

    /// <summary>A text as it can be shown: what the fonts have not is shown as a sign for that, and what is no letter at all is
    /// left out.</summary>
    public string Shown(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (var letter in text.EnumerateRunes()) // half of a pair comes as U+FFFD
        {
            if (letter.Value == '\n')
            {
                shown.Append('\n');
            }
            else if (Rune.IsWhiteSpace(letter) && letter.Value is not (0xA0 or 0x202F or 0x2007))
            {
                shown.Append(' ');
            }
            else if (!IsUnseen(letter))
            {
                shown.Append((IsKnown(letter) ? letter : Unknown).ToString());
            }
        }

        return shown.ToString();
    }

    /// <summary>Width of a text, in parts of its size.</summary>
    public double WidthOf(string text, bool isBold) => text.EnumerateRunes().Sum(letter => WidthOf(letter, isBold));

    private double WidthOf(Rune letter, bool isBold)
    {
        if (!_widths.TryGetValue((letter, isBold), out var width))
        {
            width = _measure.MeasureString(letter.ToString(), isBold ? _bold : _regular).Width / Em;
            _widths[(letter, isBold)] = width;
        }

        return width;
    }

    private bool IsKnown(Rune letter)
    {
        if (!_known.TryGetValue(letter, out var known))
        {
            known = GlyphHelper.GlyphIndexFromCodePoint(letter.Value, _regular) != 0
                && GlyphHelper.GlyphIndexFromCodePoint(letter.Value, _bold) != 0;
            _known[letter] = known;
        }

        return known;
    }

    /// <summary>Signs that only say how others are to be shown, and control characters.</summary>
    private static bool IsUnseen(Rune letter) => Rune.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format
        || letter.Value is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF);
}
