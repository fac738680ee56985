using System.Net;
using AngleSharp.Dom;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>Where a photo is filed, and what is said of it.</summary>
public sealed class PhotoFilingTests
{
    [Fact]
    public async Task Photo_goes_to_the_place_the_form_names_and_the_page_says_so()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var photo = await app.KeepPhotoAsync(bench, "lead-condition", "2");

        Assert.Equal(("lead-condition", 2), (photo.Photo.Check, photo.Photo.Cylinder));
        Assert.Equal("Photo kept: lead 2.", await SaidAsync(app, $"{bench}?check=lead-condition"));
        Assert.Equal("Photo kept: Lead condition, lead 2.", await SaidAsync(app, $"{bench}?check=spark"));
    }

    [Fact]
    public async Task Photo_of_several_ticked_places_is_kept_first_and_then_asked_about()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.SendPhotoAsync(bench, Picture(), ("check", "lead-condition"), ("cylinder", "2"), ("cylinder", "3"));

        var kept = Assert.Single(app.Inspection().Photos);
        Assert.Equal(("lead-condition", (int?)null), (kept.Photo.Check, kept.Photo.Cylinder));
        var page = await app.PageAsync($"{bench}?check=lead-condition");
        Assert.Equal("Photo kept: Lead condition. Of which lead?", page.QuerySelector("#photo-kept")!.GetAttribute("data-sentence"));
        Assert.Equal(["1", "2", "3", "4", "5", "6", "all"], page.QuerySelectorAll("#photo-kept button[name=cylinder]").Select(tile => tile.GetAttribute("value")));

        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{kept.Sequence}"), ("check", "lead-condition"), ("cylinder", "3"));

        Assert.Equal(3, Assert.Single(app.Inspection().Photos).Photo.Cylinder);
        Assert.Equal("Photo kept: lead 3.", await SaidAsync(app, $"{bench}?check=lead-condition"));
    }

    [Fact]
    public async Task Photo_said_to_be_of_all_places_is_not_asked_about_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var kept = await app.KeepPhotoAsync(bench, "lead-condition");

        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{kept.Sequence}"), ("check", "lead-condition"), ("cylinder", "all"));

        Assert.Null(app.Photo(kept.Sequence).Photo.Cylinder);
        Assert.Equal("Photo kept: Lead condition.", await SaidAsync(app, $"{bench}?check=lead-condition"));
    }

    [Fact]
    public async Task Photos_of_one_form_are_moved_together()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench, "lead-condition", "1", width: 30);
        await app.SendPhotosAsync(
            bench, [("a.jpg", Picture(40)), ("b.jpg", Picture(50))], ("check", "lead-condition"), ("cylinder", "1"), ("capture", "one-form"));

        var page = await app.PageAsync($"{bench}?check=lead-condition");
        var named = page.QuerySelectorAll("#photo-kept form.tiles input[name=photo]").Select(field => ("photo", field.GetAttribute("value")!)).ToList();
        await app.PostForRedirectAsync($"{bench}/photos/move", [.. named, ("check", "lead-condition"), ("cylinder", "4")]);

        Assert.Equal("2 photos kept: lead 1.", page.QuerySelector("#photo-kept")!.GetAttribute("data-sentence"));
        Assert.Equal([1, 4, 4], app.Inspection().Photos.Select(photo => photo.Photo.Cylinder!.Value));
    }

    [Fact]
    public async Task What_was_recorded_since_takes_the_line_away()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench, "lead-condition", "2");

        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Waiting for the torch."));

        Assert.Null((await app.PageAsync(bench)).QuerySelector("#photo-kept"));
    }

    [Theory]
    [InlineData("lead-condition", "99", "Choose a lead from 1 to 6")]
    [InlineData("lead-condition", "two", "Choose a lead from 1 to 6")]
    [InlineData("rotor-blade", "2", "without a place")]
    [InlineData("moon-phase", "", "no such check")]
    public async Task Photo_of_a_place_the_sheet_does_not_have_is_refused_and_nothing_is_left_behind(string check, string place, string message)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.SendPhotoAsync(bench, Picture(), ("check", check), ("cylinder", place));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(message, (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Inspection().Everything);
        Assert.Empty(app.MediaFiles());
    }

    [Fact]
    public async Task Photo_sent_twice_is_one_and_the_same_photo_in_two_forms_is_two()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        (string, string)[] first = [("check", "spark"), ("capture", "first-form")];

        await app.SendPhotoAsync(bench, Picture(), first);
        await app.SendPhotoAsync(bench, Picture(), first);
        await app.SendPhotosAsync(bench, [("a.jpg", Picture()), ("again.jpg", Picture())], first);
        Assert.Single(app.Inspection().Photos);

        await app.SendPhotoAsync(bench, Picture(), ("check", "spark"), ("capture", "second-form"));
        Assert.Equal(2, app.Inspection().Photos.Count());
        Assert.Single(app.MediaFiles());
    }

    [Fact]
    public async Task Page_knows_where_the_last_finding_was_said_to_be_and_a_photo_is_attached_to_its_record()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two is wet."));
        var note = app.Inspection().WordedNotes.Single().Sequence;

        var stands = await StandsAsync(app, bench);
        Assert.Equal(($"{note}", "plug-condition", "2", $"{note}"), stands);
        await app.SendPhotoAsync(bench, Picture(), ("check", stands.Check), ("cylinder", stands.Place), ("shows", stands.Shows));
        Assert.Contains("Shows “Plug two is wet.”, not confirmed yet", await CapturedAsync(app, bench), StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm");
        var record = Assert.Single(app.Inspection().Observations);

        Assert.Contains("Shows Plug condition, plug 2: wet", await CapturedAsync(app, bench), StringComparison.Ordinal);
        Assert.Equal($"{record.Sequence}", (await StandsAsync(app, bench)).Shows);
    }

    [Fact]
    public async Task Photo_taken_before_what_was_said_is_read_goes_where_it_was_said_to_be()
    {
        var gate = new TaskCompletionSource();
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet.") { Gate = gate });
        var bench = await app.StartInspectionAsync();
        await app.Client.PostAsync($"{bench}/recordings?handsFree=true", new ByteArrayContent(Sounds.Tone()), TestContext.Current.CancellationToken);
        var note = app.Inspection().VoiceNotes.Single().Sequence;
        Assert.Equal($"{note}", (await app.PageAsync(bench)).QuerySelector("#photo-stands")!.GetAttribute("data-waiting"));

        await app.SendPhotoAsync(bench, Picture(20), ("check", "lead-condition"), ("cylinder", "1"), ("shows", $"{note}"));
        await app.SendPhotoAsync(bench, Picture(30), ("check", "lead-condition"), ("cylinder", "1"), ("shows", $"{note}"));
        var moved = app.Inspection().Photos.Last();
        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{moved.Sequence}"), ("check", "lead-condition"), ("cylinder", "5"));
        gate.SetResult();
        await Eventually.GetAsync(() => app.Inspection().VoiceNotes.Single().Proposals);

        var photos = app.Inspection().Photos.ToList();
        Assert.Equal(("plug-condition", 2, note), (photos[0].Photo.Check, photos[0].Photo.Cylinder, photos[0].Photo.Shows));
        Assert.Equal(("lead-condition", 5), (photos[1].Photo.Check, photos[1].Photo.Cylinder));
    }

    [Fact]
    public async Task Form_without_scripts_offers_the_places()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var form = await (await app.Client.GetAsync($"{bench}?check=lead-condition&place=3", TestContext.Current.CancellationToken))
            .Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var fallback = form[form.IndexOf("<noscript>", form.IndexOf("photo-photo", StringComparison.Ordinal), StringComparison.Ordinal)..];

        Assert.Contains("aria-label=\"Photo of which lead\"", fallback, StringComparison.Ordinal);
        Assert.Contains("value=\"3\" selected", fallback, StringComparison.Ordinal);
    }

    private static async Task<string?> SaidAsync(TestApp app, string address) =>
        (await app.PageAsync(address)).QuerySelector("#photo-kept")?.GetAttribute("data-sentence");

    private static async Task<string> CapturedAsync(TestApp app, string bench) =>
        (await app.PageAsync(bench)).QuerySelector("#captures")!.TextContent;

    private static async Task<(string Note, string Check, string Place, string Shows)> StandsAsync(TestApp app, string bench)
    {
        var stands = (await app.PageAsync(bench)).QuerySelector("#photo-stands")!;
        string Of(string name) => stands.GetAttribute($"data-spoken{name}") ?? "";
        return (Of(""), Of("-check"), Of("-place"), Of("-shows"));
    }
}
