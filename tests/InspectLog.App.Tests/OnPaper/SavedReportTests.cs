using System.Net;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>The files that the report's page offers.</summary>
public sealed class SavedReportTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Page_saves_what_it_says_as_a_pdf_file_with_a_good_name()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench, "lead-condition", "2");
        var page = await app.PageAsync($"{bench}/report");
        var link = Assert.Single(page.QuerySelectorAll("a[download]"), one => one.TextContent == "Save as PDF");

        var answer = await app.Client.GetAsync(new Uri(link.GetAttribute("href")!, UriKind.Relative), Stop);

        Assert.Equal((HttpStatusCode.OK, "application/pdf"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Matches(@"^marigold-\d{4}-\d\d-\d\d-inspection-\d+\.pdf$", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        var file = Path.Combine(app.Folder, "saved.pdf");
        await File.WriteAllBytesAsync(file, await answer.Content.ReadAsByteArrayAsync(Stop), Stop);
        var text = Poppler.Tight(Poppler.Text(file));
        Assert.All(
            page.QuerySelectorAll("main h1, main h2, main h3, main .lead p, main figcaption, #record-head, .sealed .hash"),
            said => Assert.Contains(Poppler.Tight(said.TextContent), text, StringComparison.Ordinal));
        Assert.Contains("Notsealed", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a<b>&amp;\"</p><script>alert(1)</script>", "a<b>&amp;\"</p><script>alert(1)</script>")]
    [InlineData("שלום עולם and back", "שלוםעולםandback")]
    [InlineData("pointless \U0001F697 漢字 car", "pointless")]
    [InlineData("turned \u202eround\u202c and \u0007 rung", "turnedroundandrung")]
    public async Task Whatever_somebody_wrote_is_saved_as_words(string note, string told)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var endless = new string('w', 10_000);
        var (vehicle, inspection) = (bench.Split('/')[2], app.Inspection().Number);
        app.Garage.Append(vehicle, "Tess Okafor", _ => [new NoteWritten(inspection, null, note), new NoteWritten(inspection, null, endless)]);

        var bytes = await app.Client.GetByteArrayAsync(new Uri($"{bench}/report/pdf", UriKind.Relative), Stop);

        var file = Path.Combine(app.Folder, "saved.pdf");
        await File.WriteAllBytesAsync(file, bytes, Stop);
        var words = Poppler.Tight(string.Concat(Poppler.Told(file).Select(one => one.Text)));
        Assert.Contains(told, words, StringComparison.Ordinal);
        Assert.Contains(endless, words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_saves_itself_as_one_html_file_that_needs_nothing_else()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench, "lead-condition", "2");
        var link = Assert.Single((await app.PageAsync($"{bench}/report")).QuerySelectorAll("a[download]"), one => one.TextContent == "Save as HTML");

        var answer = await app.Client.GetAsync(new Uri(link.GetAttribute("href")!, UriKind.Relative), Stop);

        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        var saved = await TestApp.ParseAsync(answer);
        Assert.Empty(saved.QuerySelectorAll("form, script, link, iframe, a:not([href^='#'])"));
        Assert.StartsWith("data:image/jpeg;base64,/9j/", Assert.Single(saved.QuerySelectorAll("figure img")).GetAttribute("src"), StringComparison.Ordinal);
        Assert.Contains("Made with InspectLog.", saved.QuerySelector("footer")!.TextContent, StringComparison.Ordinal);
    }
}
