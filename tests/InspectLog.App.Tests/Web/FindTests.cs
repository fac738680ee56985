using AngleSharp.Html.Dom;
using InspectLog.App.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using System.Globalization;

namespace InspectLog.App.Tests.Web;

/// <summary>The page that finds: what counts first, all that there is, and what is said of what no longer counts.</summary>
public sealed class FindTests
{
    [Fact]
    public async Task More_than_a_hundred_hits_are_told_and_shown_on_demand()
    {
        await using var app = await TestApp.StartAsync();
        await NotesAsync(app, 230);

        var first = await app.PageAsync("/find?words=walrus");
        var second = await FollowAsync(app, first, "Show 100 more");
        var third = await FollowAsync(app, second, "Show the other 30");

        Assert.Equal([100, 200, 230], new[] { first, second, third }.Select(page => page.QuerySelectorAll(".hit").Length));
        Assert.Contains("Found 230 times. The first 100 are shown", first.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(second.GetElementById("hit-101"));
        Assert.DoesNotContain("Show", third.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("-1")]
    [InlineData("99999999999999999999")]
    public async Task Number_to_show_that_is_none_shows_the_first(string show)
    {
        await using var app = await TestApp.StartAsync();
        await NotesAsync(app, 120);

        Assert.Equal(100, (await app.PageAsync($"/find?words=walrus&show={show}")).QuerySelectorAll(".hit").Length);
    }

    [Fact]
    public async Task Words_that_were_said_are_by_who_said_them()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var media = app.Garage.Media.Keep(Sounds.Tone(), "audio/wav");
        var note = app.Garage.Append("marigold", "Tess Okafor", now => [new RecordingKept(now.OpenInspection!.Number, media, 1, null)]).NextSequence - 1;
        app.Garage.Append("marigold", JournalEntry.Program, _ => [new TranscriptMade(note, "The walrus hums", [], true, "scripted", new string('0', 64))]);

        var hit = Assert.Single((await app.PageAsync("/find?words=walrus")).QuerySelectorAll(".hit"));

        Assert.Contains("Tess Okafor", hit.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(JournalEntry.Program, hit.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hits_stand_with_their_vehicle()
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();
        await app.AddVehicleAsync("Teasel");
        foreach (var vehicle in new[] { "marigold", "teasel", "marigold" })
        {
            app.Garage.Append(vehicle, "Tess Okafor", _ => [new WearPartAdded("Walrus belt", new(12, null, null), new(new(2026, 3, 1), null, null))]);
        }

        var page = await app.PageAsync("/find?words=walrus");

        Assert.Equal(
            new[] { ("Marigold", 2), ("Teasel", 1) }.ToHashSet(),
            page.QuerySelectorAll(".found-group").Select(group => (group.QuerySelector("h2")!.TextContent, group.QuerySelectorAll(".hit").Length)).ToHashSet());
    }

    [Fact]
    public async Task Withdrawn_and_put_right_entries_come_last_and_are_marked_there_and_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var number = app.Garage.FindVehicle("marigold")!.OpenInspection!.Number;
        long Next() => app.Garage.FindVehicle("marigold")!.NextSequence;
        var wrong = Next();
        app.Garage.Append(
            "marigold", "Tess Okafor", _ => [new NoteWritten(number, null, "walrus one"), new NoteWritten(number, null, "walrus two")]);
        app.Garage.Append(
            "marigold",
            "Tess Okafor",
            _ => [new NoteWritten(number, null, "walrus right") { Amends = wrong }, new EntryWithdrawn(wrong + 1, "said of another car")]);

        var hits = (await app.PageAsync("/find?words=walrus")).QuerySelectorAll(".hit").ToList();

        Assert.Equal(["walrus right", "walrus two", "walrus one"], hits.Select(hit => hit.QuerySelector("a")!.TextContent.Trim()));
        Assert.Null(hits[0].QuerySelector(".attention"));
        Assert.Contains(": said of another car.", hits[1].QuerySelector(".attention")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"with entry {wrong + 2}."), hits[2].QuerySelector(".attention")!.TextContent, StringComparison.Ordinal);
        foreach (var hit in hits)
        {
            var link = hit.QuerySelector("a")!.GetAttribute("href")!;
            var part = (await app.PageAsync(link.Split('#')[0])).GetElementById(link.Split('#')[1])!;
            Assert.NotNull(part.QuerySelector(".found-mark"));
            Assert.Equal(hit.QuerySelector(".attention")?.TextContent, part.QuerySelector("p.attention")?.TextContent);
        }
    }

    [Fact]
    public async Task Open_loose_end_that_was_searched_for_is_unfolded_and_stays_so_when_the_bench_is_read_anew()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        app.Garage.Append("marigold", "Tess Okafor", now =>
            [new LooseEndOpened(now.OpenInspection!.Number, "Walrus off its rock", "Put it back", null, null, null)]);

        var link = (await app.PageAsync("/find?words=walrus")).QuerySelector(".hit a")!.GetAttribute("href")!;
        var bench = await app.PageAsync(link.Split('#')[0]);
        var again = await app.PageAsync(bench.GetElementById("bench")!.GetAttribute("data-here")!);

        foreach (var page in new[] { bench, again })
        {
            Assert.True(page.GetElementById("ends-list")!.HasAttribute("open"));
            Assert.NotNull(page.GetElementById(link.Split('#')[1])!.QuerySelector(".found-mark"));
        }
    }

    [Fact]
    public async Task Value_typed_with_a_comma_is_found_with_a_point_and_the_other_way_about()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9,4"), ("unit", "kΩ"));

        foreach (var words in new[] { "9,4", "9.4", "9.4 kΩ", "9,4k", "coil secondary 9.4" })
        {
            var hit = Assert.Single((await app.PageAsync($"/find?words={Uri.EscapeDataString(words)}")).QuerySelectorAll(".hit"));
            Assert.StartsWith("Coil secondary", hit.QuerySelector("a")!.TextContent.Trim(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Nothing_of_the_private_facts_is_found()
    {
        await using var app = await TestApp.StartAsync();
        await app.PostForRedirectAsync("/vehicles/new", ("name", "Marigold"), ("owner", "Ana Lindqvist"), ("vin", "ZZ-000-42"));

        Assert.Empty((await app.PageAsync("/find?words=Lindqvist")).QuerySelectorAll(".hit"));
        Assert.Empty((await app.PageAsync("/find?words=ZZ-000-42")).QuerySelectorAll(".hit"));
    }

    [Fact]
    public async Task Part_that_is_not_there_marks_nothing()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        Assert.Empty((await app.PageAsync($"{bench}?found=item-99")).QuerySelectorAll(".found-mark"));
        Assert.Empty((await app.PageAsync("/vehicles/marigold/journal?found=%3Cscript%3E")).QuerySelectorAll(".found-mark"));
    }

    private static async Task NotesAsync(TestApp app, int count)
    {
        await app.StartInspectionAsync();
        app.Garage.Append("marigold", "Tess Okafor", now =>
            [.. Enumerable.Range(1, count).Select(n => new NoteWritten(now.OpenInspection!.Number, null, $"walrus {n}"))]);
    }

    private static async Task<IHtmlDocument> FollowAsync(TestApp app, IHtmlDocument page, string text) => await app.PageAsync(
        page.Links.OfType<IHtmlAnchorElement>().Single(link => link.TextContent == text).GetAttribute("href")!.Split('#')[0]);
}
