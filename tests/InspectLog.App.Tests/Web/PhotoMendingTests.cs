using System.Net;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>What is put right about a photo: caption, place, what it shows, the report, whether it counts.</summary>
public sealed class PhotoMendingTests
{
    [Fact]
    public async Task Caption_is_kept_shown_and_can_be_taken_away()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench, "lead-condition", "2");

        await app.PostForRedirectAsync($"{bench}/photos/{photo.Sequence}/caption", ("caption", "Rubbed through at the bracket"));

        Assert.Equal("Rubbed through at the bracket", app.Photo(photo.Sequence).Photo.Caption);
        Assert.Contains("Rubbed through", (await app.PageAsync(bench)).QuerySelector($"#item-{photo.Sequence} img")!.GetAttribute("alt"), StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/photos/{photo.Sequence}/caption", ("caption", ""));
        Assert.Null(app.Photo(photo.Sequence).Photo.Caption);
    }

    [Fact]
    public async Task Caption_that_is_too_tooLongis_refused_and_stays_in_its_field()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench);
        var tooLong = new string('x', 301);

        var answer = await app.PostAsync($"{bench}/photos/{photo.Sequence}/caption", ("caption", tooLong));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var field = (await TestApp.ParseAsync(answer)).QuerySelector($"#item-{photo.Sequence} input[name=caption]")!;
        Assert.Equal((tooLong, "true"), (field.GetAttribute("value"), field.GetAttribute("aria-invalid")));
        Assert.Null(app.Photo(photo.Sequence).Photo.Caption);
    }

    [Fact]
    public async Task Photo_is_moved_to_another_check_by_the_list()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench, "lead-condition", "2");

        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{photo.Sequence}"), ("where", "cap-contacts/5"));
        Assert.Equal(("cap-contacts", 5), (app.Photo(photo.Sequence).Photo.Check, app.Photo(photo.Sequence).Photo.Cylinder));

        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{photo.Sequence}"), ("where", ""));
        Assert.Null(app.Photo(photo.Sequence).Photo.Check);
    }

    [Theory]
    [InlineData("where", "cap-contacts/99")]
    [InlineData("where", "moon-phase/")]
    public async Task Move_to_what_the_sheet_does_not_have_is_refused(string field, string value)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench, "lead-condition", "2");

        var answer = await app.PostAsync($"{bench}/photos/move", ("photo", $"{photo.Sequence}"), (field, value));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal("lead-condition", app.Photo(photo.Sequence).Photo.Check);
    }

    [Fact]
    public async Task Photo_attached_to_a_record_is_filed_where_that_is_and_moved_away_it_shows_it_no_longer()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "lead-condition"), ("cylinder", "4"), ("condition", "burnt"));
        var record = Assert.Single(app.Inspection().Observations).Sequence;
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;

        await app.PostForRedirectAsync($"{bench}/photos/{photo}/shows", ("shows", $"{record}"));
        Assert.Equal((4, record), (app.Photo(photo).Photo.Cylinder, app.Photo(photo).Photo.Shows));
        Assert.Contains(
            "Lead condition, lead 4: burnt", (await app.PageAsync($"{bench}/photos/{photo}")).QuerySelector("dl.facts")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{photo}"), ("check", "lead-condition"), ("cylinder", "5"));
        Assert.Null(app.Photo(photo).Photo.Shows);
    }

    [Theory]
    [InlineData("999")]
    [InlineData("the burnt one")]
    public async Task Photo_cannot_be_attached_to_what_is_no_record(string shows)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;

        var answer = await app.PostAsync($"{bench}/photos/{photo}/shows", ("shows", shows));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Null(app.Photo(photo).Photo.Shows);
    }

    [Fact]
    public async Task Photo_is_taken_back_for_a_reason_pressed_or_typed_and_undone()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;

        await app.PostForRedirectAsync($"{bench}/photos/{photo}/withdraw", ("reason", "not sharp"), ("other", ""));
        Assert.Equal("not sharp", app.Photo(photo).History.Withdrawn!.Reason);
        var page = await app.PageAsync($"{bench}?check=lead-condition");
        Assert.Contains("Taken back: not sharp.", page.QuerySelector($"#item-{photo}")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Photo taken back: lead 2.", page.QuerySelector("#photo-kept")!.GetAttribute("data-sentence"));

        await app.PostForRedirectAsync(page.QuerySelector($"#item-{photo} form")!.GetAttribute("action")!);
        Assert.Null(app.Photo(photo).History.Withdrawn);
        Assert.Equal(2, app.Photo(photo).Photo.Cylinder);

        // The button that Enter presses in the field sends its own reason along; the typed one is meant.
        await app.PostForRedirectAsync($"{bench}/photos/{photo}/withdraw", ("reason", "not sharp"), ("other", "wrong car"));
        Assert.Equal("wrong car", app.Photo(photo).History.Withdrawn!.Reason);
    }

    [Fact]
    public async Task Photo_is_not_taken_back_without_a_reason()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench)).Sequence;

        var answer = await app.PostAsync($"{bench}/photos/{photo}/withdraw", ("other", " "));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("Press a reason", (await TestApp.ParseAsync(answer)).QuerySelector($"#item-{photo}")!.TextContent, StringComparison.Ordinal);
        Assert.Single(app.Inspection().Photos);
    }

    [Fact]
    public async Task Nothing_of_the_kind_is_not_found()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "The torch is flat."));
        var note = app.Inspection().Captures.Single().Sequence;

        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync($"{bench}/photos/{note}", TestContext.Current.CancellationToken)).StatusCode);
        foreach (var deed in new[] { "caption", "shows", "withdraw", "restore" })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/photos/{note}/{deed}", ("reason", "x"))).StatusCode);
        }

        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/photos/move", ("photo", $"{note}"))).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync($"{bench}/photos/move", ("where", "spark/"))).StatusCode);
    }
}
