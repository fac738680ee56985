using System.Globalization;
using AngleSharp.Dom;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Web;

/// <summary>What the pages say of a loose end that may stay so for a limited time only.</summary>
public sealed class EndClockTests
{
    private readonly FakeTimeProvider _time = new(new(2026, 3, 4, 9, 0, 0, TimeSpan.Zero));

    [Fact]
    public async Task Strip_says_since_when_and_for_how_long_in_words_and_for_the_script()
    {
        await using var app = await TestApp.StartAsync(time: _time);
        var bench = await IgnitionOnAsync(app);
        _time.Advance(TimeSpan.FromSeconds(83));

        var strip = await StripAsync(app, bench);

        Assert.Contains("Ignition switched on 1:23 of 2:00", Text(strip.QuerySelector("summary")!), StringComparison.Ordinal);
        Assert.Contains("since 09:00, at most 2 min", Text(strip.QuerySelector("summary")!), StringComparison.Ordinal);
        Assert.Equal(2, strip.QuerySelectorAll(".end-clock").Length); // the summary's and the list's
        var over = strip.NextElementSibling!.QuerySelector(".end-over")!;
        Assert.True(over.HasAttribute("hidden"));
        Assert.False(strip.HasAttribute("data-over"));
        Assert.All(strip.QuerySelectorAll(".end-clock .late"), late => Assert.True(late.HasAttribute("hidden")));
        Assert.Equal("120", over.GetAttribute("data-limit-seconds"));
        var (opened, now) = (over.GetAttribute("data-opened")!, strip.GetAttribute("data-now")!);
        Assert.Matches(@"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}[+-]\d\d:\d\d$", opened);
        Assert.Equal(TimeSpan.FromSeconds(83), DateTimeOffset.Parse(now, CultureInfo.InvariantCulture) - DateTimeOffset.Parse(opened, CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task End_over_its_time_says_what_to_do_and_why_until_it_is_tied()
    {
        await using var app = await TestApp.StartAsync(time: _time);
        var bench = await IgnitionOnAsync(app);
        _time.Advance(TimeSpan.FromMinutes(2));

        var strip = await StripAsync(app, bench);

        Assert.True(strip.HasAttribute("data-over"));
        Assert.All(strip.QuerySelectorAll(".end-clock .late"), late => Assert.False(late.HasAttribute("hidden")));
        Assert.Contains("Over its time: Ignition switched on", Text(strip.QuerySelector("summary")!), StringComparison.Ordinal);
        var over = strip.NextElementSibling!.QuerySelector(".end-over")!;
        Assert.False(over.HasAttribute("hidden"));
        Assert.Contains("Switch the ignition off. With the engine standing,", Text(over), StringComparison.Ordinal);

        await app.PostForRedirectAsync(over.QuerySelector("form")!.GetAttribute("action")!);

        var after = await StripAsync(app, bench);
        Assert.Null(after.ParentElement!.QuerySelector(".end-over, .end-clock"));
        Assert.False(after.HasAttribute("data-over") || after.HasAttribute("data-now"));
    }

    [Fact]
    public async Task End_with_a_limit_is_told_first_however_many_came_after_it()
    {
        await using var app = await TestApp.StartAsync(time: _time);
        var bench = await IgnitionOnAsync(app);
        foreach (var text in new[] { "Air filter off", "Lamp hung up", "Bonnet propped", "Wheel chocked" })
        {
            await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", text));
        }

        var told = (await StripAsync(app, bench)).QuerySelectorAll("summary > span:not(.push)").Select(Text).ToList();

        Assert.StartsWith("Ignition switched on", told[0].Replace("Over its time: ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(["Wheel chocked", "Bonnet propped"], told[1..]);
    }

    [Fact]
    public async Task Check_says_the_limit_with_its_reason_and_source_before_anything_is_on()
    {
        await using var app = await TestApp.StartAsync(time: _time);
        var bench = await app.StartInspectionAsync();

        var card = Text((await app.PageAsync($"{bench}?check=supply-voltage")).QuerySelector("#disturbs")!);

        Assert.Contains("Ignition switched on, at most 2 min", card, StringComparison.Ordinal);
        Assert.Contains("overheats. Common practice, no source. The vehicle maker's manual wins.", card, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Inspection_by_the_sheet_of_before_limits_has_no_clock()
    {
        await using var app = await TestApp.StartAsync(time: _time);
        await app.AddVehicleAsync();
        var old = BuiltInSheets.FindExact("dd1c69d376bbdd2ee2362038c7c4f20b445df490d1747eb255ee6ae7c1cd94e4")!;
        app.Garage.Append("marigold", "Tess Okafor", _ => [new InspectionStarted(old.Id, old.Version, old.Sha256, "Tess Okafor", null, null) { Cylinders = 6 }]);
        var bench = Links.Inspection("marigold", app.Inspection().Number);
        await SwitchOnAsync(app, bench);
        _time.Advance(TimeSpan.FromHours(1));

        var strip = await StripAsync(app, bench);

        Assert.Contains("Ignition switched on", Text(strip.QuerySelector("summary")!), StringComparison.Ordinal);
        Assert.Null(strip.ParentElement!.QuerySelector(".end-over, .end-clock"));
    }

    [Theory]
    [InlineData(4, true)]
    [InlineData(1, false)]
    public async Task Report_says_what_was_left_for_longer_than_the_sheet_allows(int minutes, bool isTold)
    {
        await using var app = await TestApp.StartAsync(time: _time);
        var bench = await IgnitionOnAsync(app);
        Assert.Contains("Ignition switched on: still to be put right, since 09:00, and the sheet allows 2 min", await ReportAsync(app, bench), StringComparison.Ordinal);
        _time.Advance(TimeSpan.FromMinutes(minutes));
        var end = app.Inspection().OpenLooseEnds.First(one => one.What.Disturbance == "ignition-on").Sequence;

        await app.PostForRedirectAsync($"{bench}/loose-ends/{end}/tie");

        Assert.Equal(
            isTold, (await ReportAsync(app, bench)).Contains("Ignition switched on for 4 min; the sheet allows 2 min.", StringComparison.Ordinal));
    }

    private static async Task<string> IgnitionOnAsync(TestApp app)
    {
        var bench = await app.StartInspectionAsync();
        await SwitchOnAsync(app, bench);
        return bench;
    }

    private static Task SwitchOnAsync(TestApp app, string bench) =>
        app.PostForRedirectAsync($"{bench}/disturb", ("check", "supply-voltage"), ("disturbance", "ignition-on"));

    private static async Task<IElement> StripAsync(TestApp app, string bench) => (await app.PageAsync(bench)).QuerySelector("#ends")!;

    private static async Task<string> ReportAsync(TestApp app, string bench) => Text((await app.PageAsync($"{bench}/report")).Body!);

    private static string Text(IElement element) =>
        string.Join(' ', element.TextContent.Replace('\u00a0', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
