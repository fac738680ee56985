using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace InspectLog.Paper.Drawing;

/// <summary>The fonts that come with this room. None of the computer's own is ever used, so that a file is the same wherever it
/// is made.</summary>
internal sealed class PaperFonts : IFontResolver
{
    private const string Family = "Paper";
    private const string Regular = "DejaVuSansCondensed";
    private const string Bold = "DejaVuSansCondensed-Bold";

    // The library asks one resolver for the whole process, and reads each file once.
    static PaperFonts() => GlobalFontSettings.FontResolver ??= new PaperFonts();

    private readonly ConcurrentDictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    private PaperFonts()
    {
    }

    /// <summary>A font.</summary>
    /// <param name="size">Size of its letters, points.</param>
    /// <param name="isBold">Whether it is bold.</param>
    public static XFont Of(double size, bool isBold) => new(
        Family, size, isBold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => _files.GetOrAdd(faceName, static name =>
    {
        using var file = typeof(PaperFonts).Assembly.GetManifestResourceStream(name + ".ttf")
            ?? throw new FileNotFoundException($"The font {name} is not built in.");
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    });
}
