using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace InspectLog.Browser.Tests.Support;

/// <summary>A page as it comes out of the printer.</summary>
/// <param name="Margins">The words in the margins at its head and foot.</param>
/// <param name="Lines">The lines between them, from the top.</param>
internal sealed record PrintedPage(string Margins, IReadOnlyList<string> Lines)
{
    /// <summary>Height of the margins that the report leaves, a little less: 17 mm in points.</summary>
    private const double Margin = 17 / 25.4 * 72;

    /// <summary>Words whose feet are this near stand on one line, points.</summary>
    private const double SameLine = 3;

    /// <summary>Prints the page that is open.</summary>
    /// <param name="page">The page.</param>
    /// <param name="paper">"A4" or "Letter".</param>
    public static async Task<IReadOnlyList<PrintedPage>> PrintAsync(IPage page, string paper)
    {
        var bytes = await page.PdfAsync(new() { Format = paper, PrintBackground = false });
        using var document = PdfDocument.Open(bytes);
        return [.. document.GetPages().Select(Of)];
    }

    private static PrintedPage Of(Page page)
    {
        var words = page.GetWords().ToLookup(word => IsInMargin(page, word));
        return new(string.Join('\n', LinesOf(words[true])), LinesOf(words[false]));
    }

    private static List<string> LinesOf(IEnumerable<Word> words)
    {
        var lines = new List<List<Word>>();
        foreach (var word in words.OrderByDescending(word => word.BoundingBox.Bottom))
        {
            if (lines.Count == 0 || lines[^1][0].BoundingBox.Bottom - word.BoundingBox.Bottom > SameLine)
            {
                lines.Add([]);
            }

            lines[^1].Add(word);
        }

        return lines.ConvertAll(Text);
    }

    private static bool IsInMargin(Page page, Word word) =>
        word.BoundingBox.Bottom < Margin || word.BoundingBox.Top > page.Height - Margin;

    private static string Text(IEnumerable<Word> words) =>
        string.Join(' ', words.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text));
}
