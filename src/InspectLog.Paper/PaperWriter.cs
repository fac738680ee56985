using InspectLog.Paper.Blocks;
using InspectLog.Paper.Drawing;
using InspectLog.Paper.Layout;
using PdfSharp.Pdf;

namespace InspectLog.Paper;

/// <summary>Writes documents as PDF files (ISO 32000-1) with their structure, so that they can be listened to. The same document
/// makes the same bytes. It knows nothing of what is written.</summary>
public static class PaperWriter
{
    private const double FurnitureSize = 8;

    private static readonly Ink Soft = Ink.Of(0x3A4146);

    /// <summary>Writes a document as a file.</summary>
    /// <param name="document">The document.</param>
    /// <param name="progress">Is told which page was begun, of how many.</param>
    /// <param name="stop">Gives it up.</param>
    /// <returns>The file.</returns>
    public static byte[] Write(PaperDocument document, IProgress<PaperProgress>? progress = null, CancellationToken stop = default)
    {
        var letters = new Letters();
        var content = new PartMaker(letters, document.NoPicture).Stack(document.Blocks, Flow.Width);
        var pages = Put(content, new NoSheets(), static (_, _) => { });
        using var pdf = new PdfDocument();
        Describe(pdf, document);
        using (var sheets = new PdfSheets(pdf, letters))
        {
            pdf.Language = document.Language; // what the structure begins with is English of no country
            Put(content, sheets, (on, page) =>
            {
                stop.ThrowIfCancellationRequested();
                progress?.Report(new(page, pages));
                Furnish(on, document, letters, document.PageNumber(page, pages));
            });
            sheets.EndPage();
            return Bytes(pdf);
        }
    }

    private static int Put(StackPart content, ISheets sheets, Action<ISheets, int> furniture)
    {
        var flow = new Flow(sheets, furniture);
        flow.NextPage();
        content.Put(flow, Flow.Side);
        return flow.Page;
    }

    private static void Describe(PdfDocument pdf, PaperDocument document)
    {
        pdf.Options.UseFlateDecoderForJpegImages = PdfUseFlateDecoderForJpegImages.Never;
        pdf.Options.FlateEncodeMode = PdfFlateEncodeMode.BestCompression;
        pdf.Options.CompressContentStreams = true;
        pdf.Info.Title = document.Title;
        pdf.Info.Creator = document.Program;
        pdf.Info.CreationDate = document.Made.UtcDateTime;
        pdf.Info.ModificationDate = document.Made.UtcDateTime;
        pdf.ViewerPreferences.DisplayDocTitle = true;
        pdf.PageMode = PdfPageMode.UseOutlines;
    }

    private static void Furnish(ISheets on, PaperDocument document, Letters letters, string number)
    {
        const double Head = Flow.Top - 24, Foot = Flow.PageHeight - 32;
        var right = Words(letters, document.HeadRight, Flow.Width / 2);
        on.BeginUntold();
        Put(on, letters, Words(letters, document.HeadLeft, Flow.Width - WidthOf(letters, right) - 12), Head, atTheRight: false);
        Put(on, letters, right, Head, atTheRight: true);
        Put(on, letters, Words(letters, document.FootLeft, Flow.Width / 2), Foot, atTheRight: false);
        Put(on, letters, number, Foot, atTheRight: true);
        on.End();
    }

    private static void Put(ISheets on, Letters letters, string words, double baseline, bool atTheRight)
    {
        if (words.Length > 0)
        {
            on.Words(words, new(FurnitureSize, false, Soft), Flow.Side + (atTheRight ? Flow.Width - WidthOf(letters, words) : 0), baseline);
        }
    }

    /// <summary>As much of a text as has room in one line.</summary>
    private static string Words(Letters letters, string text, double width)
    {
        var words = letters.Shown(text).Replace('\n', ' ');
        if (WidthOf(letters, words) <= width)
        {
            return words;
        }

        var kept = string.Concat(words.EnumerateRunes().Take((int)(width / FurnitureSize * 2)));
        while (kept.Length > 0 && WidthOf(letters, kept + "…") > width)
        {
            kept = kept[..^(kept.Length > 1 && char.IsLowSurrogate(kept[^1]) ? 2 : 1)];
        }

        return kept + "…";
    }

    private static double WidthOf(Letters letters, string words) => letters.WidthOf(words, isBold: false) * FurnitureSize;

    private static byte[] Bytes(PdfDocument pdf)
    {
        using var file = new MemoryStream();
        pdf.Save(file, closeStream: false);
        var bytes = file.ToArray();
        SameBytes.Make(bytes);
        return bytes;
    }
}

/// <summary>How far a document is written.</summary>
/// <param name="Page">The page that was begun.</param>
/// <param name="Of">How many there are.</param>
public readonly record struct PaperProgress(int Page, int Of);
