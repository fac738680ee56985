using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <content>Words remembered from corrections.</content>
public sealed partial class OwnWordTests
{
    [Fact]
    public async Task Next_voice_note_is_read_with_the_own_words()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Sparkler three is cooked.", "Sparkler three is cooked."));
        var bench = await app.StartInspectionAsync();
        Assert.DoesNotContain((await HeardAsync(app, bench, 1)).Proposals!, proposal => proposal.Finding.Doubts.Count == 0);
        await AddAsync(app, "sparkler", PlugCondition, "");
        await AddAsync(app, "cooked", PlugCondition, "worn");

        var finding = Assert.Single((await HeardAsync(app, bench, 2)).Proposals!).Finding;

        Assert.Equal(("plug-condition", 3, "worn", 0), (finding.Check, finding.Cylinder, finding.Condition, finding.Doubts.Count));
    }

    [Fact]
    public async Task Word_is_remembered_from_a_correction_and_understood_the_next_time()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet, all crispy.", "Plug four is crispy."));
        var bench = await app.StartInspectionAsync();
        var note = await HeardAsync(app, bench, 1);
        var change = $"{bench}/findings/{note.Sequence}/0/change";
        var page = await app.PageAsync(change);
        Assert.Equal("crispy", page.QuerySelector<IHtmlInputElement>("#change-phrase")!.Value);
        Assert.False(page.QuerySelector<IHtmlInputElement>("[name=remember]")!.IsChecked);

        await app.PostForRedirectAsync(change, Correction(("remember", "on"), ("phrase", "crispy"), ("meaning", "seen")));

        Assert.Equal("worn", Assert.Single(Inspection(app).Observations).Body.Condition);
        var word = Assert.Single(app.Garage.Workshop.Words);
        Assert.Equal(new OwnWordAdded("ignition-breakerless", "crispy", "plug-condition", "worn"), word.Body);
        Assert.Equal("Tess Okafor", word.Actor);
        var next = Assert.Single((await HeardAsync(app, bench, 2)).Proposals!).Finding;
        Assert.Equal((4, "worn", 0), (next.Cylinder, next.Condition, next.Doubts.Count));
    }

    [Fact]
    public async Task Correction_can_teach_another_name_of_the_check()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        var note = await HeardAsync(app, bench, 1);

        await app.PostForRedirectAsync(
            $"{bench}/findings/{note.Sequence}/0/change", Correction(("remember", "on"), ("phrase", "sparkler"), ("meaning", "check")));

        Assert.Null(Assert.Single(app.Garage.Workshop.Words).Body.Condition);
    }

    [Fact]
    public async Task Nothing_is_learned_from_a_correction_unasked()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        var note = await HeardAsync(app, bench, 1);

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/change", Correction(("phrase", "crispy"), ("meaning", "seen")));

        Assert.Single(Inspection(app).Observations);
        Assert.Empty(app.Garage.Workshop.Words);
    }

    [Fact]
    public async Task Word_that_cannot_be_remembered_is_refused_before_anything_is_recorded()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        var note = await HeardAsync(app, bench, 1);

        var answer = await app.PostAsync(
            $"{bench}/findings/{note.Sequence}/0/change", Correction(("remember", "on"), ("phrase", "the"), ("meaning", "seen")));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains("everyday words", page.GetElementById("change-phrase-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.True(page.QuerySelector<IHtmlInputElement>("[name=remember]")!.IsChecked);
        Assert.Empty(Inspection(app).Observations);
        Assert.Empty(app.Garage.Workshop.Words);
    }

    [Fact]
    public async Task Correction_sent_twice_records_and_learns_once()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        var note = await HeardAsync(app, bench, 1);
        var correction = Correction(("remember", "on"), ("phrase", "crispy"), ("meaning", "seen"));

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/change", correction);
        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/change", correction);

        Assert.Single(Inspection(app).Observations);
        Assert.Single(app.Garage.Workshop.Words);
    }
}
