using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>Typed notes are read for findings as spoken ones are.</summary>
public sealed class TypedNoteTests
{
    [Fact]
    public async Task Findings_of_a_typed_note_stand_below_it_and_are_confirmed_together()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = await WriteAsync(app, bench, "Coil secondary 9.4k. Plug two wet.");

        var item = (await app.PageAsync(bench)).QuerySelector($"#item-{note}")!;
        Assert.Equal(2, item.QuerySelectorAll("mark").Length);
        Assert.Equal("Coil secondary 9.4k. Plug two wet.", MendedBench.TextOf(item.QuerySelector(".said")!).Replace(" .", ".", StringComparison.Ordinal));
        Assert.Equal(2, item.QuerySelectorAll($"form[action^='{bench}/findings/{note}/'][action$='/confirm']").Length);
        Assert.NotNull(item.QuerySelector($"a[href^='{bench}/findings/{note}/0/change']"));
        Assert.NotNull(item.QuerySelector($"form[action='{bench}/findings/{note}/1/drop']"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.Equal("coil-secondary-resistance", Assert.Single(app.Inspection().Readings).Body.Check);
        Assert.Equal((2, "wet"), (app.Inspection().Observations[0].Body.Cylinder, app.Inspection().Observations[0].Body.Condition));
    }

    [Fact]
    public async Task Note_put_right_is_read_anew_and_what_was_confirmed_is_not_asked_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = await WriteAsync(app, bench, "Plug two wet. Plug four sooty.");
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");

        await app.AmendAsync(bench, note, ("text", "Plug two wet. Plug five sooty."));

        var open = Assert.Single(app.Inspection().FindNote(note)!.Proposals!, one => one.State == ProposalState.Open);
        Assert.Equal((5, "sooty"), (open.Finding.Cylinder, open.Finding.Condition));
        var text = await app.CapturedAsync(bench, note);
        Assert.Contains("plug 2: wet, confirmed", text, StringComparison.Ordinal);
        Assert.Contains("plug 5: sooty", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Dropped", text, StringComparison.Ordinal);
        Assert.Contains("was “Plug two wet. Plug four sooty.”", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Note_of_a_closed_inspection_is_put_right_and_not_read()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = await WriteAsync(app, bench, "Bonnet stay rattles.");
        await app.CloseAsync(bench);

        await app.AmendAsync(bench, note, ("text", "Plug two wet."));

        Assert.Equal("Plug two wet.", app.Inspection().FindNote(note)!.Words);
        Assert.Empty(app.Inspection().FindNote(note)!.Proposals!);
    }

    private static async Task<long> WriteAsync(TestApp app, string bench, string text)
    {
        await app.PostForRedirectAsync($"{bench}/notes", ("text", text));
        return app.Inspection().Captures[^1].Sequence;
    }
}
