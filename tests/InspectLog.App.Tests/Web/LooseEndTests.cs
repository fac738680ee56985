using System.Net;
using AngleSharp.Html.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>Loose ends know their part and their place.</summary>
public sealed class LooseEndTests
{
    [Fact]
    public async Task What_was_put_right_is_said_as_it_was_done_and_not_as_it_was()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/disturb", ("check", "spark"), ("disturbance", "ignition-on"));
        var end = Assert.Single(app.Inspection().OpenLooseEnds).Sequence;

        var back = await app.PostForRedirectAsync($"{bench}/loose-ends/{end}/tie");

        Assert.Equal("Done: switch the ignition off.", (await app.PageAsync(back)).QuerySelector("#did")!.TextContent.Trim());
    }

    [Fact]
    public async Task Reconnecting_one_plug_leaves_the_others_off()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        foreach (var plug in new[] { "1", "2", "3" })
        {
            await app.DoAsync(bench, "plug-condition", "disconnected", plug);
        }

        await app.DoAsync(bench, "plug-condition", "reconnected", "2");

        Assert.Equal([1, 3], app.Inspection().OpenLooseEnds.Select(end => end.What.Cylinder));
    }

    [Fact]
    public async Task Lead_taken_off_for_its_resistance_is_put_back_under_its_condition()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "4");
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "5");

        await app.DoAsync(bench, "lead-condition", "reconnected", "4");

        Assert.Equal(5, Assert.Single(app.Inspection().OpenLooseEnds).What.Cylinder);
    }

    [Fact]
    public async Task Ends_of_one_part_are_one_line_and_one_press()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        foreach (var lead in new[] { "1", "2", "3" })
        {
            await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", lead);
        }

        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
        var strip = (await app.PageAsync(bench)).QuerySelector("#ends")!;
        Assert.Contains("Plug leads 1, 2 and 3 off", strip.QuerySelector("summary")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("4 loose ends", strip.QuerySelector("summary")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(3, strip.QuerySelectorAll("details details .end").Length);
        var all = (IHtmlFormElement)strip.QuerySelector($"form[action='{bench}/loose-ends/tie']")!;
        var ends = all.QuerySelectorAll("input[name=end]").OfType<IHtmlInputElement>().Select(end => ("end", end.Value)).ToArray();

        await app.PostForRedirectAsync($"{bench}/loose-ends/tie", ends);

        Assert.Equal("Air filter off", Assert.Single(app.Inspection().OpenLooseEnds).What.Text);
        var entries = app.CountOfEntries();
        await app.PostForRedirectAsync($"{bench}/loose-ends/tie", ends);
        Assert.Equal(entries, app.CountOfEntries());
    }

    [Fact]
    public async Task Single_end_of_a_group_is_tied_by_itself_and_a_wrong_number_ties_none()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "1");
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "2");
        var ends = app.Inspection().OpenLooseEnds.Select(end => end.Sequence).ToList();

        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/loose-ends/tie", ("end", $"{ends[0]}"), ("end", "999"))).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/loose-ends/tie")).StatusCode);
        Assert.Equal(2, app.Inspection().OpenLooseEnds.Count());

        await app.PostForRedirectAsync($"{bench}/loose-ends/{ends[0]}/tie");
        Assert.Equal(ends[1], Assert.Single(app.Inspection().OpenLooseEnds).Sequence);
    }

    [Fact]
    public async Task Closing_does_the_ends_of_one_part_in_one_tick()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "1");
        await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "2");
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
        var page = await app.PageAsync($"{bench}/close");
        var all = (IHtmlInputElement)Assert.Single(page.QuerySelectorAll("input[name=tie-all]"));
        Assert.Contains("Plug leads 1 and 2 off", page.QuerySelectorAll("legend").Select(legend => legend.TextContent));

        await app.PostAsync($"{bench}/close", ("tie-all", all.Value));

        Assert.Equal("Air filter off", Assert.Single(app.Inspection().OpenLooseEnds).What.Text);
    }
}
