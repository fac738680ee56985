using System.Globalization;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>The stream comes in stretches, the newest first, and by sort; what waits for an answer is among them however old it is.</summary>
public sealed class StreamStretchTests
{
    [Fact]
    public async Task Newest_five_are_shown_with_older_ones_a_press_away_and_a_finding_to_settle_is_always_among_them()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two wet."));
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        await WriteAsync(app, bench, 15);

        var page = await app.PageAsync($"{bench}?check=spark");
        Assert.Equal(6, Shown(page).Count);
        Assert.Contains("Plug two wet.", Shown(page)[^1], StringComparison.Ordinal);
        var older = page.QuerySelector(".older a")!;
        Assert.Equal("Show 11 older", older.TextContent.Trim());

        var all = await app.PageAsync(older.GetAttribute("href")!);
        Assert.Equal(17, Shown(all).Count);
        Assert.Null(all.QuerySelector(".older"));
        Assert.Contains("show=29", all.QuerySelector("#bench")!.GetAttribute("data-here"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_much_waits_the_newest_of_it_are_shown_and_the_rest_is_counted_and_reached_by_a_press()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        for (var at = 0; at < 30; at++)
        {
            await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two wet."));
        }

        await WriteAsync(app, bench, 8);

        var page = await app.PageAsync($"{bench}?check=spark");
        Assert.Equal(5 + 12, Shown(page).Count);
        Assert.Equal("30 findings to settle", page.QuerySelector("#stream-pointer")!.TextContent.Trim());
        var older = page.QuerySelector(".older a")!;
        Assert.Equal("Show 21 older", older.TextContent.Trim());
        Assert.Equal(29, Shown(await app.PageAsync(older.GetAttribute("href")!)).Count);
    }

    [Theory]
    [InlineData("Notes", 3, "By hand")]
    [InlineData("Recorded", 2, "weak")]
    [InlineData("Photos", 1, "Plug two wet.")]
    [InlineData("All", 4, "weak")]
    public async Task Sort_is_chosen_in_one_press_and_what_waits_stays(string sort, int shown, string among)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two wet."));
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        await WriteAsync(app, bench, 2);

        var link = (await app.PageAsync($"{bench}?check=spark")).QuerySelectorAll(".stream-choice a").Single(one => one.TextContent == sort);
        var page = await app.PageAsync(link.GetAttribute("href")!);

        Assert.Equal(sort, page.QuerySelector(".stream-choice [aria-current]")!.TextContent);
        Assert.Equal(shown, Shown(page).Count);
        Assert.Contains(Shown(page), text => text.Contains(among, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Form_on_an_old_entry_comes_back_with_as_much_of_the_stream_as_reaches_to_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "The very first"));
        var first = app.Garage.Entries("marigold").Last(entry => entry.Body is NoteWritten).Sequence;
        await WriteAsync(app, bench, 45);

        var answer = await app.PostForRedirectAsync(
            string.Create(CultureInfo.InvariantCulture, $"{bench}/entries/{first}/withdraw"), ("reason", "Misheard"), ("here", $"{bench}?check=spark"));

        Assert.EndsWith(string.Create(CultureInfo.InvariantCulture, $"?check=spark&show=50#item-{first}"), answer, StringComparison.Ordinal);
        Assert.Equal(46, Shown(await app.PageAsync(answer)).Count);
    }

    [Theory]
    [InlineData("stream=nonsense")]
    [InlineData("show=-4")]
    [InlineData("show=99999999999999999999")]
    public async Task Address_that_makes_no_sense_shows_the_newest_of_everything(string query)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await WriteAsync(app, bench, 21);

        Assert.Equal(5, Shown(await app.PageAsync($"{bench}?check=spark&{query}")).Count);
    }

    private static async Task WriteAsync(TestApp app, string bench, int notes)
    {
        for (var at = 0; at < notes; at++)
        {
            await app.PostForRedirectAsync($"{bench}/notes", ("text", string.Create(CultureInfo.InvariantCulture, $"By hand, {at}")));
        }
    }

    private static List<string> Shown(IHtmlDocument page) => [.. page.QuerySelectorAll("#captures > li").Select(item => item.TextContent)];
}
