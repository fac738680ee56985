using System.Net;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>Photos and recordings of an inspection that is closed.</summary>
public sealed class PhotoAfterClosingTests
{
    [Fact]
    public async Task What_is_refused_because_it_is_closed_leaves_nothing_in_the_media_store()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.CloseAsync(bench);

        var photo = await app.SendPhotoAsync(bench, Picture(), ("check", "spark"));
        var recording = await app.Client.PostAsync(
            $"{bench}/recordings", new ByteArrayContent(Sounds.Tone()), TestContext.Current.CancellationToken);

        Assert.Equal((HttpStatusCode.Conflict, HttpStatusCode.Conflict), (photo.StatusCode, recording.StatusCode));
        Assert.Empty(app.MediaFiles());
        Assert.Empty(app.Inspection().Everything);
    }

    [Fact]
    public async Task Photo_is_added_later_as_an_addendum()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.CloseAsync(bench);

        var answer = await app.SendPhotoAsync(
            $"{bench}/addendum", Picture(), ("at", "lead-condition/2"), ("caption", "Seen on the road test"));

        var added = Assert.Single(app.Inspection().Everything.OfType<Journal.State.PhotoCapture>());
        Assert.Equal((true, "Seen on the road test"), (added.History.IsLater, added.Photo.Caption));
        Assert.Empty(app.Inspection().Photos);
        Assert.Equal($"{bench}/report#later", answer.Headers.Location!.ToString());
        Assert.Contains("added after closing", (await app.PageAsync($"{bench}/photos/{added.Sequence}")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Addendum_without_a_photo_is_refused_and_says_so()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.CloseAsync(bench);

        var answer = await app.SendPhotosAsync($"{bench}/addendum", [], ("at", "lead-condition/2"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("Choose at least one photo.", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Caption_and_place_set_after_closing_are_marked_as_later()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;
        await app.CloseAsync(bench);

        await app.PostForRedirectAsync($"{bench}/photos/{photo}/caption", ("caption", "Lead 3 after all"), ("viewer", "?to=report"));
        await app.PostForRedirectAsync($"{bench}/photos/move", ("photo", $"{photo}"), ("where", "lead-condition/3"), ("viewer", "?to=report"));

        Assert.Equal([true, true], app.Photo(photo).History.Past.Select(past => past.IsLater));
        Assert.Equal((3, false), (app.Photo(photo).Photo.Cylinder, app.Photo(photo).History.IsLater));
        Assert.Contains("after closing", (await app.PageAsync($"{bench}/photos/{photo}")).QuerySelector("[aria-labelledby=history-title]")!.TextContent, StringComparison.Ordinal);
    }
}
