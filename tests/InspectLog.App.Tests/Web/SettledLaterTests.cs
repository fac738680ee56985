using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>A finding that was left unconfirmed when its inspection was closed can be settled afterwards, as something
/// that was added later.</summary>
public sealed class SettledLaterTests
{
    [Fact]
    public async Task Finding_confirmed_after_closing_is_added_later_and_changes_no_check()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, note) = await ClosedAsync(app, "Plug two wet. Coil secondary 9.4k.");
        var leftOut = app.Inspection().LeftOut;
        var card = (await app.PageAsync(bench)).QuerySelector($"#finding-{note}-0")!;
        Assert.Contains("changes no check", card.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync(card.QuerySelector("form[action$='/confirm']")!.GetAttribute("action")!);

        var seen = Assert.IsType<Recorded<ObservationMade>>(Assert.Single(app.Inspection().Addenda));
        Assert.Equal((2, "wet"), (seen.Body.Cylinder, seen.Body.Condition));
        Assert.Empty(app.Inspection().Observations);
        Assert.Equal(leftOut, app.Inspection().LeftOut);
        Assert.Empty(app.Inspection().LooseEnds); // nothing of a closed inspection comes off
        Assert.Contains("Added after the inspection was closed, by Tess Okafor", await app.CapturedAsync(bench, note), StringComparison.Ordinal);

        var report = await app.PageAsync($"{bench}/report");
        var later = MendedBench.TextOf(report.QuerySelector($"#later-{seen.Sequence}")!);
        Assert.Contains("Plug condition, plug 2", later, StringComparison.Ordinal);
        Assert.Contains("Said in the inspection, confirmed on", later, StringComparison.Ordinal);
        var attention = MendedBench.TextOf(report.QuerySelector("#attention")!);
        Assert.Contains("Confirmed later: Plug condition, plug 2: wet", attention, StringComparison.Ordinal);
        Assert.DoesNotContain("not confirmed: Plug condition", attention, StringComparison.Ordinal);
        Assert.Contains("Written but not confirmed: Coil secondary", attention, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Findings_of_a_closed_inspection_are_confirmed_together()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, note) = await ClosedAsync(app, "Plug two wet. Coil secondary 9.4k.");

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.Equal(2, app.Inspection().Addenda.Count());
        Assert.Null((await app.PageAsync(bench)).QuerySelector("#ends a[href^='#finding-']"));
    }

    [Fact]
    public async Task Finding_changed_after_closing_is_recorded_as_it_was_changed()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, note) = await ClosedAsync(app, "Plug two wet.");

        await app.PostForRedirectAsync(
            $"{bench}/findings/{note}/0/change", ("check", "plug-condition"), ("cylinder", "3"), ("condition", "sooty"));

        var seen = Assert.IsType<Recorded<ObservationMade>>(Assert.Single(app.Inspection().Addenda));
        Assert.Equal((3, "sooty"), (seen.Body.Cylinder, seen.Body.Condition));
    }

    [Fact]
    public async Task Finding_dropped_after_closing_is_marked_as_dropped_later_by_whom()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, note) = await ClosedAsync(app, "Plug two wet.");
        Assert.NotNull((await app.PageAsync(bench)).QuerySelector($"#ends a[href='#finding-{note}-0']"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/drop");

        Assert.Contains("Dropped after the inspection was closed, by Tess Okafor.", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
        var report = MendedBench.TextOf((await app.PageAsync($"{bench}/report")).QuerySelector("#later")!);
        Assert.Contains("by Tess Okafor: plug condition, plug 2: wet, which was not confirmed before closing.", report, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/entries/{note}/report", ("shown", "false"));
        Assert.DoesNotContain("wet", MendedBench.TextOf((await app.PageAsync($"{bench}/report")).QuerySelector("#later")!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finding_dropped_before_closing_is_not_marked_as_later()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = await WriteAsync(app, bench, "Plug two wet.");
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/drop");
        await app.CloseAsync(bench);

        Assert.DoesNotContain("after the inspection was closed", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
        Assert.Null((await app.PageAsync($"{bench}/report")).QuerySelector("#later"));
    }

    private static async Task<(string Bench, long Note)> ClosedAsync(TestApp app, string words)
    {
        var bench = await app.StartInspectionAsync();
        var note = await WriteAsync(app, bench, words);
        await app.CloseAsync(bench);
        return (bench, note);
    }

    private static async Task<long> WriteAsync(TestApp app, string bench, string text)
    {
        await app.PostForRedirectAsync($"{bench}/notes", ("text", text));
        return app.Inspection().Captures[^1].Sequence;
    }
}
