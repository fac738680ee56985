using InspectLog.App.Tests.Web;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using UglyToad.PdfPig;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>What is marked in a photo stands over it in the files of a report, and is told in words.</summary>
public sealed class MarkedPhotoTests
{
    private const string Crack = """{"shape":"arrow","points":[[0.8,0.8],[0.2,0.2]],"text":"Hairline crack"}""";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Marks_are_drawn_over_the_photo_and_told_with_it_in_the_pdf_file()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.SendPhotoAsync(bench, Picture(2000, 1500), ("check", "lead-condition"), ("cylinder", "2"));
        var plain = await SavedAsync(app, bench, "plain.pdf");
        var photo = app.Inspection().Photos.Single().Sequence;
        await app.PostForRedirectAsync($"{bench}/photos/{photo}/marks", ("mark", Crack), ("seen", ""));

        var marked = await SavedAsync(app, bench, "marked.pdf");

        using var file = PdfDocument.Open(marked);
        Assert.Contains(TaggedTree.Of(file).All, one => one is { Type: "Figure", Alt: { } words } && words.Contains("Marked: arrow to the upper left: Hairline crack", StringComparison.Ordinal));
        Assert.Equal(file.GetPages().Sum(page => page.GetImages().Count()), Images(plain));
        Assert.Contains("Hairline crack", Poppler.Text(marked), StringComparison.Ordinal);
        Assert.Equal(0, Yellow(plain));
        Assert.InRange(Yellow(marked), 100, 100_000);
    }

    [Fact]
    public async Task File_that_stands_alone_has_the_photo_in_it_under_its_marks()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.SendPhotoAsync(bench, Picture(2000, 1500), ("check", "lead-condition"), ("cylinder", "2"));
        await app.PostForRedirectAsync($"{bench}/photos/{app.Inspection().Photos.Single().Sequence}/marks", ("mark", Crack), ("seen", ""));

        var html = await app.Client.GetStringAsync(new Uri($"{bench}/report/html", UriKind.Relative), Stop);

        Assert.Contains("<image href=\"data:image/jpeg;base64,/9j/", html, StringComparison.Ordinal);
        Assert.DoesNotContain("/display\"", html, StringComparison.Ordinal);
    }

    private static async Task<string> SavedAsync(TestApp app, string bench, string name)
    {
        var file = Path.Combine(app.Folder, name);
        await File.WriteAllBytesAsync(file, await app.Client.GetByteArrayAsync(new Uri($"{bench}/report/pdf", UriKind.Relative), Stop), Stop);
        return file;
    }

    private static int Images(string file)
    {
        using var pdf = PdfDocument.Open(file);
        return pdf.GetPages().Sum(page => page.GetImages().Count());
    }

    // The core of marks is of a yellow that nothing else in a report has.
    private static int Yellow(string file)
    {
        using var pdf = PdfDocument.Open(file);
        var count = 0;
        for (var page = 1; page <= pdf.NumberOfPages; page++)
        {
            using var picture = Image.Load<Rgb24>(Poppler.Page(file, page, 96));
            picture.ProcessPixelRows(rows =>
            {
                for (var y = 0; y < rows.Height; y++)
                {
                    foreach (var pixel in rows.GetRowSpan(y))
                    {
                        count += pixel is { R: > 235, G: > 200, B: < 60 } ? 1 : 0;
                    }
                }
            });
        }

        return count;
    }
}
