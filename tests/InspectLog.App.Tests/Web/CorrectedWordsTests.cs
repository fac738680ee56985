using System.Net;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>The words of a voice note that was misheard are put right: what was heard stays, what was confirmed stays, and what
/// was open is read anew.</summary>
public sealed class CorrectedWordsTests
{
    [Fact]
    public async Task Words_are_put_right_and_read_anew_and_what_was_heard_is_shown()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("plug-condition", "wet", 2), HeardNote.Seen("plug-condition", "sooty", 4));
        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");
        Assert.Equal("as heard", (await app.FilledAsync(bench, note))["text"]);

        await app.AmendAsync(bench, note, ("text", "Plug two wet. Plug five sooty."));

        var state = app.Inspection();
        Assert.Equal(("Plug two wet. Plug five sooty.", "as heard"), (state.FindVoiceNote(note)!.Words, state.FindVoiceNote(note)!.Transcript!.Text));
        var open = Assert.Single(state.FindNote(note)!.Proposals!, one => one.State == ProposalState.Open);
        Assert.Equal((5, "sooty"), (open.Finding.Cylinder, open.Finding.Condition));
        Assert.Equal(2, Assert.Single(state.Observations).Body.Cylinder);
        var text = await app.CapturedAsync(bench, note);
        Assert.Contains("Heard: “as heard”", text, StringComparison.Ordinal);
        Assert.Contains("by Tess Okafor", text, StringComparison.Ordinal);
        Assert.Contains("plug 2: wet, confirmed", text, StringComparison.Ordinal);
        Assert.Contains("plug 5: sooty", text, StringComparison.Ordinal);
        Assert.DoesNotContain("plug 4", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Dropped", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_words_add_nothing_none_are_refused_and_a_second_correction_keeps_the_first()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app);
        var entries = app.CountOfEntries();
        await app.AmendAsync(bench, note);
        var refused = await app.AmendAsync(bench, note, ("text", " "));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("Write what was said.", (await TestApp.ParseAsync(refused)).QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(entries, app.CountOfEntries());

        await app.AmendAsync(bench, note, ("text", "The clip rattles."));
        await app.AmendAsync(bench, note, ("text", "The clip is loose."));
        var text = await app.CapturedAsync(bench, note);
        Assert.Contains("Heard: “as heard”", text, StringComparison.Ordinal);
        Assert.Contains("was “The clip rattles.”", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correction_made_meanwhile_by_another_is_said()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app);
        var seen = (await app.FilledAsync(bench, note))["seen"];
        await app.AmendAsync(bench, note, ("text", "The clip rattles."));

        var refused = await app.AmendAsync(bench, note, ("seen", seen), ("text", "The clip is gone."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Equal("The clip rattles.", app.Inspection().FindNote(note)!.Words);
    }

    [Fact]
    public async Task After_closing_words_are_put_right_and_not_read()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app);
        await app.CloseAsync(bench);

        await app.AmendAsync(bench, note, ("text", "Plug two wet."));

        Assert.Equal("Plug two wet.", app.Inspection().FindNote(note)!.Words);
        Assert.Empty(app.Inspection().FindNote(note)!.Proposals!);
        var report = (await app.PageAsync($"{bench}/report")).QuerySelector("#notes")!.TextContent;
        Assert.Contains("Plug two wet.", report, StringComparison.Ordinal);
        Assert.Contains("was heard as “as heard”", report, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Voice_note_that_waits_or_is_a_command_has_no_words_to_put_right()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var command = HeardNote.Propose(app);
        app.Garage.Append("marigold", "InspectLog", _ => [new CommandHeard(command, SpokenCommand.NextCheck, null)]);

        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync($"{bench}/entries/{command}/amend", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/entries/{command}/amend", ("text", "Plug two wet."))).StatusCode);
    }

    [Fact]
    public async Task Change_of_a_finding_leads_to_the_words_of_its_note()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("plug-condition", "wet", 2));

        Assert.NotNull((await app.PageAsync($"{bench}/findings/{note}/0/change")).QuerySelector($"a[href='{bench}/entries/{note}/amend']"));
    }
}
