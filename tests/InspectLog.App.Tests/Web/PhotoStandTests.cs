using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>Where a person stands by what was said last, and what a photo may be said to show.</summary>
public sealed class PhotoStandTests
{
    [Fact]
    public async Task Finding_that_was_dropped_is_no_place_to_stand()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two is wet."));
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Lead three is burnt."));
        Assert.Equal(("lead-condition", 3), Place(app));

        await app.PostForRedirectAsync($"{bench}/findings/{app.Inspection().WordedNotes.Last().Sequence}/0/drop");

        Assert.Equal(("plug-condition", 2), Place(app));
    }

    [Fact]
    public async Task Finding_that_was_changed_is_where_it_was_changed_to()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Plug two is wet."));
        var note = app.Inspection().WordedNotes.Single().Sequence;

        await app.PostForRedirectAsync(
            $"{bench}/findings/{note}/0/change", ("check", "plug-condition"), ("cylinder", "5"), ("condition", "wet"));

        Assert.Equal(("plug-condition", 5), Place(app));
    }

    [Fact]
    public async Task Nothing_said_is_no_place_to_stand()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Waiting for the torch."));

        Assert.Null(Place(app));
    }

    [Fact]
    public async Task Journal_takes_no_photo_of_what_is_not_there()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var other = await app.KeepPhotoAsync(bench);
        PhotoKept Showing(long sequence) => other.Photo with { Shows = sequence };

        foreach (var nothing in new[] { 999, other.Sequence })
        {
            Assert.Throws<EntryRefusedException>(() => app.Garage.Append("marigold", "Tess Okafor", _ => [Showing(nothing)]));
            Assert.Throws<EntryRefusedException>(() => app.Garage.Append("marigold", "Tess Okafor", _ => [new ReportChoice(999, false)]));
        }
    }

    [Fact]
    public async Task Photo_that_names_what_is_not_there_is_kept_all_the_same()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await app.SendPhotoAsync(bench, Picture(), ("check", "spark"), ("cylinder", "1"), ("shows", "999"));

        Assert.Null(Assert.Single(app.Inspection().Photos).Photo.Shows);
    }

    private static (string, int?)? Place(TestApp app)
    {
        var scene = BenchScene.Find(app.Garage, new SheetLibrary(app.Garage.Sheets), "marigold", app.Inspection().Number)!;
        return SpokenPlace.Newest(scene) is { } place ? (place.Check, place.Cylinder) : null;
    }
}
