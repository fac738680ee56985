using System.Net;
using System.Net.Http.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>A capture that is sent twice, because a button was pressed twice or an answer got lost, is one entry.</summary>
public sealed class SentTwiceTests
{
    private const string Spoken = "2026-05-03T10:11:12.345+02:00";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Form_pressed_twice_is_one_entry_that_keeps_its_id_and_the_next_page_brings_another()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var first = IdOf(await app.PageAsync($"{bench}?check=plug-condition"), "/observations");

        await ObserveAsync(app, bench, first, "wet");
        await ObserveAsync(app, bench, first, "wet");

        var stamp = Assert.Single(Kept<ObservationMade>(app)).Stamp!;
        Assert.StartsWith(first, stamp.Id, StringComparison.Ordinal);
        Assert.Equal(DateTimeOffset.Parse(Spoken, null), stamp.At);

        var next = IdOf(await app.PageAsync($"{bench}?check=plug-condition"), "/observations");
        await ObserveAsync(app, bench, next, "wet");
        Assert.Equal(2, Kept<ObservationMade>(app).Count);
    }

    [Fact]
    public async Task Capture_that_waited_on_its_device_says_how_long_and_is_still_the_same_when_it_is_sent_later_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        foreach (var waited in new[] { "300", "420" })
        {
            await app.PostForRedirectAsync($"{bench}/observations?waited={waited}", ("check", "plug-condition"), ("cylinder", "1"), ("condition", "wet"), ("capture", "one"), ("captured", Spoken));
        }

        Assert.Equal(300, Assert.Single(Kept<ObservationMade>(app)).Stamp!.Waited);
        Assert.Contains("Captured without the network; it came here", (await app.PageAsync(bench)).QuerySelector("#captures > li")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-5")]
    [InlineData("soon")]
    [InlineData("99999999999999999999")]
    [InlineData("2592001")]
    public async Task Wait_that_nobody_can_believe_is_passed_over(string waited)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.PostForRedirectAsync($"{bench}/notes?waited={waited}", ("text", "It rattles."), ("capture", "one"), ("captured", Spoken));

        Assert.Null(Assert.Single(Kept<NoteWritten>(app)).Stamp!.Waited);
    }

    [Fact]
    public async Task Photo_that_waited_behind_a_note_goes_where_the_note_belongs_and_without_one_where_the_form_says()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Coil secondary 9.4 k."));
        await SendFollowingAsync(app, bench, 64);
        await app.PostForRedirectAsync($"{bench}/notes?waited=60", ("text", "Plug three sooty."), ("capture", "two"), ("captured", Spoken));
        await SendFollowingAsync(app, bench, 65);

        Assert.Equal(
            [("spark", (int?)null), ("plug-condition", 3)],
            app.Inspection().Photos.Select(photo => (photo.Photo.Check!, photo.Photo.Cylinder)));
    }

    private static async Task SendFollowingAsync(TestApp app, string bench, int width)
    {
        using var answer = await app.SendPhotoAsync($"{bench}", PhotoSending.Picture(width), ("check", "spark"), ("follows", "newest"), ("capture", $"photo-{width}"));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
    }

    [Fact]
    public async Task Form_changed_before_it_is_sent_again_is_another_entry()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await ObserveAsync(app, bench, "one", "wet");
        await ObserveAsync(app, bench, "one", "worn");

        Assert.Equal(["wet", "worn"], Kept<ObservationMade>(app).Select(one => one.Condition));
    }

    [Fact]
    public async Task Second_press_is_answered_that_it_was_recorded_already()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await ObserveAsync(app, bench, "one", "wet");
        await ObserveAsync(app, bench, "one", "wet");

        Assert.Equal("It was recorded already.", (await app.PageAsync(bench)).QuerySelector("#did")!.TextContent);
    }

    [Fact]
    public async Task Every_form_that_records_something_has_an_id_of_its_own()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k. Plug two wet."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, "a", Sounds.Tone());
        await Eventually.GetAsync(() => app.Garage.FindVehicle("marigold")!.Inspections[0].VoiceNotes.Single().Proposals);
        await ObserveAsync(app, bench, "one", "wet");

        foreach (var address in new[] { $"{bench}?check=plug-condition", $"{bench}?check=pickup-air-gap", $"{bench}/close" })
        {
            var forms = (await app.PageAsync(address)).QuerySelectorAll<IHtmlFormElement>("form[method=post]:not([action='/sunlight'])").ToList();

            Assert.NotEmpty(forms);
            var ids = forms.Select(form => Assert.Single(form.QuerySelectorAll<IHtmlInputElement>("input[name=capture]")).Value).ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
            Assert.All(ids, id => Assert.Matches("^[0-9a-f]{32}-[0-9]+$", id));
        }
    }

    [Fact]
    public async Task Recording_sent_again_is_answered_with_the_same_number_and_is_one_entry()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var first = await SendAsync(app, bench, "note-1", Sounds.Tone());
        var other = await SendAsync(app, bench, "note-2", Sounds.Tone());
        var again = await SendAsync(app, bench, "note-1", Sounds.Tone());

        Assert.Equal(first, again);
        Assert.NotEqual(first, other);
        var stamp = Kept<RecordingKept>(app)[0].Stamp!;
        Assert.Equal(("note-1", DateTimeOffset.Parse(Spoken, null)), (stamp.Id, stamp.At));
        Assert.Equal(2, Kept<RecordingKept>(app).Count);
    }

    [Fact]
    public async Task Close_sent_again_leads_to_the_report_it_led_to()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var page = await app.PageAsync($"{bench}/close");
        var fields = page.QuerySelectorAll<IHtmlInputElement>("main form input[name]")
            .Select(input => (input.Name!, input.Name!.StartsWith("reason-", StringComparison.Ordinal) ? "not today" : input.Value)).ToArray();

        var first = await app.PostForRedirectAsync($"{bench}/close", fields);
        var again = await app.PostForRedirectAsync($"{bench}/close", fields);

        Assert.Equal($"{bench}/report", first);
        Assert.Equal(first, again);
        Assert.Single(Kept<InspectionClosed>(app));
    }

    private static string IdOf(IHtmlDocument page, string action) =>
        page.QuerySelector<IHtmlInputElement>($"form[action$='{action}'] input[name=capture]")!.Value;

    private static async Task ObserveAsync(TestApp app, string bench, string id, string condition) => await app.PostForRedirectAsync(
        $"{bench}/observations",
        ("capture", id), ("captured", Spoken), ("check", "plug-condition"), ("cylinder", "2"), ("condition", condition));

    private static async Task<long> SendAsync(TestApp app, string bench, string id, byte[] sound)
    {
        using var content = new ByteArrayContent(sound);
        var answer = await app.Client.PostAsync(
            $"{bench}/recordings?check=spark&capture={id}&captured={Uri.EscapeDataString(Spoken)}", content, Stop);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<Dictionary<string, long>>(Stop))!["recording"];
    }

    private static List<T> Kept<T>(TestApp app)
        where T : EntryBody => [.. app.Garage.Entries("marigold").Select(entry => entry.Body).OfType<T>()];
}
