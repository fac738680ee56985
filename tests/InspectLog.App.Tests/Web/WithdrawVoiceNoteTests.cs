namespace InspectLog.App.Tests.Web;

/// <summary>Words that were misheard, and are all there is of a voice note, can be withdrawn; a recording that findings rest on
/// stays.</summary>
public sealed class WithdrawVoiceNoteTests
{
    private const string Secondary = "coil-secondary-resistance";

    [Fact]
    public async Task Voice_note_that_is_words_alone_is_withdrawn_and_stands_in_no_report()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app);
        Assert.Contains("as heard", (await app.PageAsync($"{bench}/report")).QuerySelector("#notes")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull((await app.PageAsync(bench)).QuerySelector($"#withdraw-{note} button[value=misheard]"));

        await app.PostForRedirectAsync($"{bench}/entries/{note}/withdraw", ("usual", "misheard"));

        Assert.DoesNotContain("as heard", (await app.PageAsync($"{bench}/report")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("by Tess Okafor: misheard", await app.CapturedAsync(bench, note), StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/entries/{note}/restore");
        Assert.Contains("as heard", (await app.PageAsync($"{bench}/report")).QuerySelector("#notes")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Voice_note_is_offered_for_withdrawal_once_no_finding_rests_on_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Reading(Secondary, 9400));
        Assert.Null((await app.PageAsync(bench)).QuerySelector($"#withdraw-{note}"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/drop");

        Assert.NotNull((await app.PageAsync(bench)).QuerySelector($"#withdraw-{note}"));
    }
}
