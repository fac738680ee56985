using System.Net;
using InspectLog.Checks;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>A photo from the stand of an earlier one: offered where an inspection is open, filed where the earlier one is.</summary>
public sealed class PhotoAgainTests
{
    [Fact]
    public async Task Photo_of_a_closed_inspection_offers_it_for_the_open_one_and_the_form_files_it_under_the_same_place()
    {
        await using var app = await TestApp.StartAsync();
        var closed = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(closed, "lead-condition", "2")).Sequence;
        await CloseAsync(app, closed);
        Assert.Null((await app.PageAsync($"{closed}/photos/{photo}")).QuerySelector("a[href*='/again']"));
        var open = await app.PostForRedirectAsync("/vehicles/marigold/inspections", ("technician", "Tess Okafor"));

        var offered = (await app.PageAsync($"{closed}/photos/{photo}")).QuerySelector("a[href*='/again']")!.GetAttribute("href")!;
        var page = await app.PageAsync(offered);

        Assert.Equal($"{open}/photos/again?like={photo}", offered);
        Assert.Equal($"{open}/photos", page.QuerySelector("main form")!.GetAttribute("action"));
        Assert.Equal(("lead-condition", "2"), (page.QuerySelector("[name=check]")!.GetAttribute("value"), page.QuerySelector("[name=cylinder]")!.GetAttribute("value")));
        Assert.Equal($"{open}?check=lead-condition&place=2", page.QuerySelector("[data-again]")!.GetAttribute("data-bench"));
    }

    [Fact]
    public async Task Closed_inspection_says_so_and_takes_none()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;
        await CloseAsync(app, bench);

        var page = await app.PageAsync($"{bench}/photos/again?like={photo}");

        Assert.Null(page.QuerySelector("main form"));
        Assert.Contains("This inspection is closed", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_photo_or_was_taken_back_is_not_found()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;
        await app.PostForRedirectAsync($"{bench}/photos/{photo}/withdraw", ("reason", "not sharp"), ("viewer", ""));

        foreach (var like in new[] { photo, 1, 9_999 })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync($"{bench}/photos/again?like={like}", TestContext.Current.CancellationToken)).StatusCode);
        }
    }

    private static Task CloseAsync(TestApp app, string bench) => app.PostForRedirectAsync(
        $"{bench}/close", [.. BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless)!.Checks.Select(check => ($"reason-{check.Id}", "Not today"))]);
}
