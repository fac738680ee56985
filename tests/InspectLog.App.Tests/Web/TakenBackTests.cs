using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>An end ticked off or a finding dropped by mistake comes back in one press, as it was, and the journal keeps both.
/// </summary>
public sealed class TakenBackTests
{
    [Fact]
    public async Task End_ticked_off_by_mistake_is_open_again_since_it_was()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/disturb", ("check", "spark"), ("disturbance", "ignition-on"));
        var before = Assert.Single(app.Inspection().OpenLooseEnds);
        await app.PostForRedirectAsync($"{bench}/loose-ends/{before.Sequence}/tie");
        var undo = Assert.Single((await app.PageAsync(bench)).QuerySelectorAll($"#ends-steps form[action='{bench}/loose-ends/untie']"));

        var back = await app.PostForRedirectAsync($"{bench}/loose-ends/untie", FieldsOf(undo));

        var end = Assert.Single(app.Inspection().OpenLooseEnds);
        Assert.Equal((before.Sequence, before.Opened, null), (end.Sequence, end.Opened, end.Tied));
        Assert.Equal(
            [typeof(LooseEndOpened), typeof(LooseEndTied), typeof(EntryWithdrawn)],
            app.Garage.Entries("marigold").TakeLast(3).Select(entry => entry.Body!.GetType()));
        Assert.StartsWith("Open again: Ignition switched on, since ", (await app.PageAsync(back)).QuerySelector("#did")!.TextContent.Trim(), StringComparison.Ordinal);
        var entries = app.CountOfEntries();
        await app.PostForRedirectAsync($"{bench}/loose-ends/untie", FieldsOf(undo));
        Assert.Equal(entries, app.CountOfEntries());
    }

    [Fact]
    public async Task Ends_ticked_off_together_come_back_together_and_a_wrong_number_brings_back_none()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        foreach (var lead in new[] { "1", "2", "3" })
        {
            await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", lead);
        }

        var ends = app.Inspection().OpenLooseEnds.Select(end => ("end", $"{end.Sequence}")).ToArray();
        await app.PostForRedirectAsync($"{bench}/loose-ends/tie", ends);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/loose-ends/untie", ("end", "999"))).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/loose-ends/untie")).StatusCode);

        var row = Assert.Single((await app.PageAsync(bench)).QuerySelectorAll($"#ends-steps form[action='{bench}/loose-ends/untie']"));
        await app.PostForRedirectAsync($"{bench}/loose-ends/untie", FieldsOf(row));

        Assert.Equal(3, app.Inspection().OpenLooseEnds.Count());
        Assert.Equal(3, app.Inspection().LooseEnds.Count);
    }

    [Fact]
    public async Task End_that_a_record_put_right_comes_back_with_its_record_alone()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.DoAsync(bench, "plug-condition", "disconnected", "2");
        await app.DoAsync(bench, "plug-condition", "reconnected", "2");
        var end = Assert.Single(app.Inspection().LooseEnds).Sequence;
        Assert.Empty((await app.PageAsync(bench)).QuerySelectorAll($"form[action='{bench}/loose-ends/untie']"));

        await app.PostForRedirectAsync($"{bench}/loose-ends/untie", ("end", $"{end}"));

        Assert.Empty(app.Inspection().OpenLooseEnds);
    }

    [Fact]
    public async Task Dropped_finding_waits_again_with_a_new_entry_and_is_confirmed_as_ever()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading("coil-secondary-resistance", 9400), HeardNote.Reading("coil-secondary-resistance", 9410));
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/drop");
        Assert.Single((await app.PageAsync(bench)).QuerySelectorAll($"#finding-{note}-0 form[action='{bench}/findings/{note}/0/reopen']"));

        var back = await app.PostForRedirectAsync($"{bench}/findings/{note}/0/reopen");

        Assert.Equal("2 findings wait to be settled again.", (await app.PageAsync(back)).QuerySelector("#did")!.TextContent.Trim());
        Assert.All(app.Inspection().FindNote(note)!.Proposals!, one => Assert.Equal(ProposalState.Open, one.State));
        Assert.Equal(2, app.Garage.Entries("marigold").Count(entry => entry.Body is FindingReopened));
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");
        Assert.Single(app.Inspection().Readings);
        var entries = app.CountOfEntries();
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/reopen");
        Assert.Equal(entries, app.CountOfEntries());
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/findings/{note}/9/reopen")).StatusCode);
    }

    [Fact]
    public async Task After_closing_only_what_was_dropped_after_it_comes_back()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("plug-condition", "wet", 2), HeardNote.Seen("plug-condition", "sooty", 3));
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/drop");
        await app.CloseAsync(bench);
        await app.PostForRedirectAsync($"{bench}/findings/{note}/1/drop");
        Assert.Single((await app.PageAsync(bench)).QuerySelectorAll("form[action$='/reopen']"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/reopen");
        await app.PostForRedirectAsync($"{bench}/findings/{note}/1/reopen");

        Assert.Equal([ProposalState.Dropped, ProposalState.Open], app.Inspection().FindNote(note)!.Proposals!.Select(one => one.State));
    }

    private static (string, string)[] FieldsOf(IElement form) =>
        [.. form.QuerySelectorAll<IHtmlInputElement>("input[name=end]").Select(field => (field.Name!, field.Value))];
}
