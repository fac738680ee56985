using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>The journal entry by entry, in stretches that a page can bear.</summary>
public sealed class JournalTests
{
    private const int Notes = 620;

    [Fact]
    public async Task Older_and_newer_lead_past_every_entry_once()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await LongAsync(app);

        var down = await WalkAsync(app, $"{vehicle}/journal", "Older entries");
        var up = await WalkAsync(app, down.LastPage, "Newer entries");

        Assert.Equal(Enumerable.Range(1, Notes + 2).Reverse().Select(n => $"entry-{n}"), down.Ids);
        Assert.Equal(down.Ids.Order(), up.Ids.Distinct().Order());
    }

    [Fact]
    public async Task Short_journal_is_one_page_without_steps()
    {
        await using var app = await TestApp.StartAsync();

        var page = await app.PageAsync($"{await app.AddVehicleAsync()}/journal");

        Assert.Equal("entry-1", Assert.Single(page.QuerySelectorAll(".journal > li")).Id);
        Assert.DoesNotContain("entries", page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_found_is_on_the_page_it_leads_to()
    {
        await using var app = await TestApp.StartAsync();
        await LongAsync(app);

        var link = (await app.PageAsync("/find?words=marigold")).QuerySelector("a[href$='#entry-1']")!.GetAttribute("href")!;

        var (address, id) = (link.Split('#')[0], link.Split('#')[1]);
        Assert.Contains("Marigold", (await app.PageAsync(address)).GetElementById(id)!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("99999999999999999999")]
    [InlineData("100000")]
    public async Task Place_that_is_none_shows_the_newest(string upTo)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await LongAsync(app);

        var page = await app.PageAsync($"{vehicle}/journal?upto={upTo}");

        Assert.Equal($"entry-{Notes + 2}", page.QuerySelector(".journal > li")!.Id);
    }

    private static async Task<string> LongAsync(TestApp app)
    {
        await app.StartInspectionAsync();
        app.Garage.Append("marigold", "Tess Okafor", now =>
        [
            .. Enumerable.Range(1, Notes).Select(n => new NoteWritten(now.OpenInspection!.Number, null, $"Note {n}")),
        ]);
        return "/vehicles/marigold";
    }

    /// <summary>Follows a link from page to page; gives the ids of all entries in the order met.</summary>
    private static async Task<(IReadOnlyList<string> Ids, string LastPage)> WalkAsync(TestApp app, string address, string link)
    {
        var ids = new List<string>();
        for (string? next = address; next is not null;)
        {
            address = next;
            var page = await app.PageAsync(address);
            ids.AddRange(page.QuerySelectorAll(".journal > li").Select(entry => entry.Id!));
            next = page.Links.OfType<IHtmlAnchorElement>().FirstOrDefault(one => one.TextContent == link)?.GetAttribute("href");
        }

        return (ids, address);
    }
}
