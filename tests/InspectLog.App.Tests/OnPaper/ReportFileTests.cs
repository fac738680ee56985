using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using InspectLog.App.Tests.Commands;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>The verb <c>report</c> over the invented garage, its files read by poppler and PdfPig.</summary>
public sealed class ReportFileTests(DemoReports demo) : IClassFixture<DemoReports>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("marigold")]
    [InlineData("teasel")]
    [InlineData("teasel", "buyer")]
    public async Task Every_text_of_the_html_file_is_told_in_the_pdf_file_in_its_order(string vehicle, string profile = "everything")
    {
        var (pdf, html) = (await demo.FileAsync(vehicle, "pdf", profile), await demo.FileAsync(vehicle, "html", profile));
        var told = Poppler.Tight(string.Concat(Poppler.Told(pdf).Select(one => one.Text)));

        var page = new HtmlParser().ParseDocument(await File.ReadAllTextAsync(html, Stop));
        var texts = Texts(page.Body!).ToList();

        Assert.True(texts.Count > 100);
        var at = 0;
        foreach (var text in texts)
        {
            var found = told.IndexOf(text, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"{text} is not told after …{told[Math.Max(0, at - 60)..at]}");
            at = found + text.Length;
        }
    }

    [Fact]
    public async Task Labels_of_the_strips_are_shown()
    {
        var (pdf, html) = (await demo.FileAsync("teasel", "pdf"), await demo.FileAsync("teasel", "html"));
        var labels = new HtmlParser().ParseDocument(await File.ReadAllTextAsync(html, Stop)).QuerySelectorAll("svg.strip-wide text").Select(label => Poppler.Tight(label.TextContent)).ToList();

        var shown = Poppler.Tight(Poppler.Text(pdf));

        Assert.True(labels.Count > 10);
        Assert.All(labels, label => Assert.Contains(label, shown, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Structure_has_headings_in_steps_figures_with_words_lists_and_tables()
    {
        using var pdf = PdfDocument.Open(await demo.FileAsync("teasel", "pdf"));
        var page = new HtmlParser().ParseDocument(await File.ReadAllTextAsync(await demo.FileAsync("teasel", "html"), Stop));

        var tree = TaggedTree.Of(pdf);

        var types = tree.All.Select(one => one.Type).ToList();
        Assert.Equal("Document", types[0]);
        var levels = types.Where(type => type is ['H', >= '1' and <= '6']).Select(type => type[1] - '0').ToList();
        Assert.Equal(page.QuerySelectorAll("h1, h2, h3").Select(heading => heading.LocalName[1] - '0'), levels);
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        var figures = tree.All.Where(one => one.Type == "Figure").ToList();
        Assert.Equal(page.QuerySelectorAll("figure img").Length + page.QuerySelectorAll("svg.qr").Length, figures.Count);
        Assert.All(figures, figure => Assert.True(figure.Alt is { Length: > 10 }));
        Assert.All(tree.All.Where(one => one.Type == "L"), list => Assert.All(list.Children, item => Assert.Equal("LI", item.Type)));
        Assert.All(tree.All.Where(one => one.Type == "LI"), item => Assert.Equal("LBody", item.Children[^1].Type));
        Assert.Equal(page.QuerySelectorAll("table").Count(table => table.Closest(".no-paper") is null), types.Count(type => type == "Table"));
        Assert.All(tree.All.Where(one => one.Type == "TH"), header => Assert.True(header.Scope is "Row" or "Column"));
    }

    [Fact]
    public async Task File_has_language_title_bookmarks_embedded_fonts_and_numbered_pages()
    {
        var file = await demo.FileAsync("teasel", "pdf");
        using var pdf = PdfDocument.Open(file);

        var info = Poppler.Info(file);

        Assert.Equal(("Condition report: Teasel", "yes", ProgramName.WithVersion), (info["Title"], info["Tagged"], info["Creator"]));
        Assert.Equal("en-GB", ((StringToken)TaggedTree.Catalog(pdf).Data["Lang"]).Data);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var root = Assert.Single(bookmarks.Roots);
        Assert.Equal("Teasel", root.Title);
        Assert.Contains("Failed", root.Children.Select(one => one.Title));
        Assert.Contains("Plug gap", root.Children.SelectMany(one => one.Children).Select(one => one.Title));
        Assert.Equal(2, Poppler.Fonts(file).Count);
        Assert.All(Poppler.Fonts(file), font => Assert.True(font.IsWhole && font.Name.Contains("PAPER", StringComparison.Ordinal), font.Name));
        Assert.InRange(pdf.NumberOfPages, 4, 10);
        var pages = Poppler.Text(file).Split('\f')[..^1];
        Assert.All(pages.Index(), page =>
        {
            Assert.Contains($"Page {page.Index + 1} of {pages.Length}", page.Item, StringComparison.Ordinal);
            Assert.Contains("Teasel", page.Item, StringComparison.Ordinal);
            Assert.Matches(@"Inspected on \d\d? November 2026", page.Item);
        });
    }

    [Fact]
    public async Task Camera_reads_the_seal_of_the_printed_page()
    {
        var file = await demo.FileAsync("teasel", "pdf");
        using var pdf = PdfDocument.Open(file);
        var page = pdf.GetPages().First(one => one.Text.Contains("inspectlog verify PATH --page", StringComparison.Ordinal)).Number;

        using var picture = Image.Load<L8>(Poppler.Page(file, page, 150));
        var grey = new byte[picture.Width * picture.Height];
        picture.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                for (var x = 0; x < rows.Width; x++)
                {
                    grey[y * rows.Width + x] = rows.GetRowSpan(y)[x].PackedValue;
                }
            }
        });
        var source = new ZXing.RGBLuminanceSource(grey, picture.Width, picture.Height, ZXing.RGBLuminanceSource.BitmapFormat.Gray8);
        var read = new ZXing.QrCode.QRCodeReader().decode(new(new ZXing.Common.HybridBinarizer(source)), new Dictionary<ZXing.DecodeHintType, object> { [ZXing.DecodeHintType.TRY_HARDER] = true });

        var verify = await CommandRun.OfAsync("verify", Path.Combine(demo.Garage, "vehicles", "teasel"), "--page", read.Text);
        Assert.Equal(0, verify.ExitCode);
    }

    [Fact]
    public async Task Buyer_is_told_that_something_is_withheld_and_not_what()
    {
        var (whole, buyer) = (await demo.FileAsync("teasel", "pdf"), await demo.FileAsync("teasel", "pdf", "buyer"));
        var html = await File.ReadAllTextAsync(await demo.FileAsync("teasel", "html", "buyer"), Stop);

        Assert.All([DemoReports.Owner, DemoReports.Contact, DemoReports.Vin, demo.LeftOut], secret =>
        {
            Assert.DoesNotContain(Poppler.Tight(secret), Poppler.Tight(Poppler.Text(buyer)), StringComparison.Ordinal);
            Assert.DoesNotContain(secret, html, StringComparison.Ordinal);
        });
        Assert.Contains("1noteisleftoutofthisreport.", Poppler.Tight(Poppler.Text(whole)), StringComparison.Ordinal);
        Assert.DoesNotContain("withheldfromthisfile", Poppler.Tight(Poppler.Text(whole)), StringComparison.Ordinal);
        Assert.Contains("withheldfromthisfile", Poppler.Tight(Poppler.Text(buyer)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_of_a_file_are_small_copies_without_anything_of_the_camera()
    {
        var file = await demo.FileAsync("teasel", "pdf");
        using var pdf = PdfDocument.Open(file);

        var pictures = pdf.GetPages().SelectMany(page => page.GetImages()).ToList();

        Assert.True(pictures.Count > 3);
        Assert.All(pictures, picture => Assert.True(Math.Max(picture.WidthInSamples, picture.HeightInSamples) <= InspectLog.Photos.PhotoIntake.SmallPrintEdge));
        Assert.All(pictures, picture => Assert.DoesNotContain("Exif", System.Text.Encoding.Latin1.GetString(picture.RawBytes[..Math.Min(2000, picture.RawBytes.Length)]), StringComparison.Ordinal));
        Assert.True(new FileInfo(file).Length < 2_000_000);
    }

    /// <summary>Texts that browsers show on paper. Not those for the screen alone, nor those for screens of other widths; labels of
    /// drawings are not told, since the sentence beside them says the same.</summary>
    private static IEnumerable<string> Texts(INode node) =>
        node is IText text ? (Poppler.Tight(text.Data) is { Length: > 0 } tight ? [tight] : [])
        : node is IElement element && (element.Matches(".no-paper, .unseen, form, script, style, svg") || element.HasAttribute("hidden")) ? []
        : node.ChildNodes.SelectMany(Texts);
}
