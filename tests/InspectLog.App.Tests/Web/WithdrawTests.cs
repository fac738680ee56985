using System.Net;
using AngleSharp.Html.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>What no longer counts: by one press, in view, and back again.</summary>
public sealed class WithdrawTests
{
    private const string Secondary = "coil-secondary-resistance";

    [Theory]
    [InlineData("wrong place")]
    [InlineData("misread")]
    [InlineData("entered by mistake")]
    public async Task Usual_reason_is_a_press_and_the_entry_keeps_its_place_in_captured(string reason)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        await app.MeasureAsync(bench, "supply-voltage", "12.4", "V");
        var button = (await app.PageAsync(bench)).QuerySelectorAll($"#withdraw-{entry} button[name=usual]").OfType<IHtmlButtonElement>()
            .Single(one => one.Value == reason);
        Assert.Equal($"{bench}/entries/{entry}/withdraw", button.Form!.GetAttribute("action"));

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", reason));

        Assert.DoesNotContain(app.Inspection().Readings, reading => reading.Sequence == entry);
        var page = await app.PageAsync(bench);
        Assert.Equal(
            app.Inspection().Everything.Reverse().Select(kept => $"item-{kept.Sequence}"),
            page.QuerySelectorAll("#captures > li").Select(item => item.Id));
        var item = page.QuerySelector($"#item-{entry}")!;
        Assert.Contains($"by Tess Okafor: {reason}", MendedBench.TextOf(item), StringComparison.Ordinal);
        Assert.NotNull(item.QuerySelector($"form[action='{bench}/entries/{entry}/restore'] button"));
        Assert.Null(item.QuerySelector($"#withdraw-{entry}"));
        Assert.NotNull(item.QuerySelector($"#change-captured-{entry}"));
    }

    [Fact]
    public async Task Undo_lets_it_count_again_in_one_press()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", "misread"));

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/restore");

        Assert.Equal(entry, Assert.Single(app.Inspection().Readings).Sequence);
        Assert.DoesNotContain("Withdrawn", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("reason", " ")]
    [InlineData("usual", "because")]
    public async Task Other_reason_without_words_is_refused_where_it_was_pressed(string field, string value)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");

        var answer = await app.PostAsync($"{bench}/entries/{entry}/withdraw", (field, value));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var fold = (await TestApp.ParseAsync(answer)).QuerySelector($"#withdraw-{entry}")!;
        Assert.True(fold.HasAttribute("open"));
        Assert.Contains("Say why it no longer counts", fold.QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.Single(app.Inspection().Readings);
    }

    [Theory]
    [InlineData("withdraw")]
    [InlineData("restore")]
    public async Task Twice_is_once_and_a_wrong_number_is_told(string verb)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        var recording = HeardNote.Propose(app, HeardNote.Reading(Secondary, 9400));
        if (verb == "restore")
        {
            await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", "misread"));
        }

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/{verb}", ("usual", "misread"));
        var entries = app.CountOfEntries();
        await app.PostForRedirectAsync($"{bench}/entries/{entry}/{verb}", ("usual", "misread"));

        foreach (var wrong in new[] { 999, app.Inspection().Number, recording })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/entries/{wrong}/{verb}", ("usual", "misread"))).StatusCode);
        }

        Assert.Equal(entries, app.CountOfEntries());
    }

    [Fact]
    public async Task Loose_ends_go_and_come_back_with_their_record()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var off = await app.DoAsync(bench, "lead-condition", "disconnected", "4");

        await app.PostForRedirectAsync($"{bench}/entries/{off}/withdraw", ("usual", "wrong place"));
        Assert.Empty(app.Inspection().OpenLooseEnds);
        await app.PostForRedirectAsync($"{bench}/entries/{off}/restore");
        Assert.Single(app.Inspection().OpenLooseEnds);

        var on = await app.DoAsync(bench, "lead-condition", "reconnected", "4");
        Assert.Empty(app.Inspection().OpenLooseEnds);
        await app.PostForRedirectAsync($"{bench}/entries/{on}/withdraw", ("usual", "said by mistake"));
        Assert.Single(app.Inspection().OpenLooseEnds);
        await app.PostForRedirectAsync($"{bench}/entries/{on}/restore");
        Assert.Empty(app.Inspection().OpenLooseEnds);
    }

    [Fact]
    public async Task Confirmed_finding_is_withdrawn_restored_and_put_right_in_its_note()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("plug-condition", "wet", 2));
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");
        var entry = app.Inspection().Observations[0].Sequence;

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", "wrong place"));
        Assert.Contains("Tess Okafor: wrong place", await app.CapturedAsync(bench, note), StringComparison.Ordinal);

        await app.AmendAsync(bench, entry, ("cylinder", "3"));
        Assert.Equal(3, Assert.Single(app.Inspection().Observations).Body.Cylinder);
        Assert.DoesNotContain("Withdrawn", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_page_marks_what_was_withdrawn_and_put_right_and_leads_to_where_it_is_mended()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var withdrawn = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        var amended = await app.MeasureAsync(bench, "supply-voltage", "12.4", "V");
        await app.PostForRedirectAsync($"{bench}/entries/{withdrawn}/withdraw", ("usual", "misread"));
        await app.AmendAsync(bench, amended, ("value", "12.6"));
        await app.PostForRedirectAsync($"{bench}/entries/{withdrawn}/restore");
        await app.PostForRedirectAsync($"{bench}/entries/{withdrawn}/withdraw", ("reason", "Probe had slipped"));

        var journal = await app.PageAsync("/vehicles/marigold/journal");

        string Entry(long sequence) => MendedBench.TextOf(journal.QuerySelector($"#entry-{sequence}")!);
        Assert.Contains("by Tess Okafor: Probe had slipped", Entry(withdrawn), StringComparison.Ordinal);
        var change = app.Inspection().Readings.Single(reading => reading.Sequence == amended).History.LastChange!.ChangedBy;
        Assert.Contains($"with entry {change}", Entry(amended), StringComparison.Ordinal);
        Assert.Contains($"Entry {amended} put right. Supply voltage: 12.6", Entry(change), StringComparison.Ordinal);
        Assert.Contains("misread. Undone on", Entry(withdrawn), StringComparison.Ordinal);
        Assert.Contains($"Entry {withdrawn} counts again", MendedBench.TextOf(journal.QuerySelector(".journal")!), StringComparison.Ordinal);
        var link = (IHtmlAnchorElement)journal.QuerySelector($"#entry-{change} a[href$='/amend']")!;
        Assert.NotNull((await app.PageAsync(link.GetAttribute("href")!)).QuerySelector("input[name=value]"));
    }

    [Fact]
    public async Task Entry_of_a_closed_inspection_is_withdrawn_and_restored()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, Secondary, "8.4", "kΩ");
        await app.CloseAsync(bench);

        await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", "misread"));
        Assert.Contains("after closing: misread", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);
        await app.PostForRedirectAsync($"{bench}/entries/{entry}/restore");

        Assert.Single(app.Inspection().Readings);
        var marked = await app.CapturedAsync(bench, entry);
        Assert.Contains("by Tess Okafor: misread. Undone at", marked, StringComparison.Ordinal);
        Assert.Contains("by Tess Okafor, after closing.", marked, StringComparison.Ordinal);
        var report = MendedBench.TextOf((await app.PageAsync($"{bench}/report")).QuerySelector($"#check-{Secondary}")!);
        Assert.Contains("(misread), which Tess Okafor undid on", report, StringComparison.Ordinal);
    }
}
