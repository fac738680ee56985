using AngleSharp.Dom;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>The page that shows a photo large: what it says, the ways on and the way back.</summary>
public sealed class PhotoViewerTests
{
    [Fact]
    public async Task Steps_lead_through_the_photos_of_the_check_and_then_of_the_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var whole = (await app.KeepPhotoAsync(bench, width: 20)).Sequence;
        var cap = (await app.KeepPhotoAsync(bench, "cap-contacts", "1", 30)).Sequence;
        var lead = (await app.KeepPhotoAsync(bench, "lead-condition", "1", 40)).Sequence;
        var secondCap = (await app.KeepPhotoAsync(bench, "cap-contacts", "2", 50)).Sequence;
        var back = (await app.KeepPhotoAsync(bench, "cap-contacts", "3", 60)).Sequence;
        await app.PostForRedirectAsync($"{bench}/photos/{back}/withdraw", ("reason", "not sharp"));

        var seen = new List<string>();
        for (var next = $"{bench}/photos/{lead}?to=report&at={lead}"; next is not null;)
        {
            var page = await app.PageAsync(next);
            Assert.Equal($"{bench}/report#photo-{lead}", page.QuerySelector("#photo-back")!.GetAttribute("href"));
            seen.Add(next[..next.IndexOf('?', StringComparison.Ordinal)]);
            next = page.QuerySelector("a[rel=next]")?.GetAttribute("href");
        }

        Assert.Equal(new[] { lead, cap, secondCap, whole }.Select(one => $"{bench}/photos/{one}"), seen);
        var last = await app.PageAsync($"{bench}/photos/{whole}");
        Assert.StartsWith($"{bench}/photos/{secondCap}?", last.QuerySelector("a[rel=prev]")!.GetAttribute("href"), StringComparison.Ordinal);
        Assert.Contains("Photo 4 of 4", last.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_link_to_it_leads_back_to_the_very_place()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench, width: 20);
        await app.KeepPhotoAsync(bench, "lead-condition", "2");
        var here = $"{bench}?check=lead-condition&place=3";

        foreach (var from in new[] { here, $"{bench}/report" })
        {
            var page = await app.PageAsync(from);
            var links = page.QuerySelectorAll("a:has(img)").ToList();
            Assert.NotEmpty(links);
            foreach (var link in links)
            {
                var address = new Uri(new Uri(app.Address, from), link.GetAttribute("href")).PathAndQuery;
                var way = (await app.PageAsync(address)).QuerySelector("#photo-back")!.GetAttribute("href")!.Split('#');
                Assert.Equal(from, way[0]);
                Assert.True(page.GetElementById(way[1])?.Contains(link), $"{link.GetAttribute("href")} leads back to {way[1]}");
            }
        }
    }

    [Fact]
    public async Task Page_says_when_by_whom_where_and_what_it_said_before()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;
        await app.PostForRedirectAsync($"{bench}/photos/{photo}/caption", ("caption", "Rubbed"), ("viewer", ""));
        var address = await app.PostForRedirectAsync(
            $"{bench}/photos/move", ("photo", $"{photo}"), ("check", "lead-condition"), ("cylinder", "3"), ("viewer", $"?to=report&at={photo}"));

        Assert.Equal($"{bench}/photos/{photo}?to=report&at={photo}", address);
        var page = await app.PageAsync(address);
        Assert.Contains("Lead condition, lead 3", page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(app.Photo(photo).History.By, page.QuerySelector("dl.facts")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Rubbed", page.QuerySelector("figcaption")!.TextContent);
        Assert.EndsWith("Lead condition, lead 3. Rubbed", page.QuerySelector("figure img")!.GetAttribute("alt"), StringComparison.Ordinal);
        Assert.Equal(
            ["Lead condition, lead 2 ", "Lead condition, lead 2, “Rubbed” "],
            page.QuerySelectorAll("[aria-labelledby=history-title] li").Select(past => past.FirstChild!.TextContent));
    }

    [Fact]
    public async Task What_is_refused_on_it_is_said_on_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;

        var answer = await app.PostAsync($"{bench}/photos/{photo}/withdraw", ("viewer", "?to=report"), ("other", ""));

        var page = await TestApp.ParseAsync(answer);
        Assert.Equal(System.Net.HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull(page.QuerySelector("[data-photo-viewer] details[open] [aria-invalid=true]"));
        Assert.Equal($"{bench}/report", page.QuerySelector("#photo-back")!.GetAttribute("href"));
    }

    [Theory]
    [InlineData("?to=https://elsewhere.example/&check=x")]
    [InlineData("?to=report&at=-1%23x")]
    [InlineData("?to=//elsewhere.example")]
    public async Task Way_back_never_leaves_the_inspection(string query)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench)).Sequence;

        var back = (await app.PageAsync($"{bench}/photos/{photo}{query}")).QuerySelector("#photo-back")!.GetAttribute("href");

        Assert.StartsWith(bench, back, StringComparison.Ordinal);
    }
}
