using InspectLog.Photos.Developing;
using InspectLog.Photos;

namespace InspectLog.App.Tests.Web;

/// <summary>Photos that are judged when they come in.</summary>
public sealed class JudgedPhotoTests
{
    [Fact]
    public async Task Blurred_photo_is_kept_asked_about_on_its_card_and_removed_in_one_press()
    {
        await using var app = await TestApp.StartAsync(photos: () => new Judge(new() { Sharpness = new(1.3, BlurCause.Focus) }));
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench);

        var page = await app.PageAsync(bench);

        const string asked = "Blurred: nothing in it is in focus. Take it again?";
        Assert.Contains(asked, page.QuerySelector("#photo-kept .line")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(page.QuerySelectorAll(".photo-remark"), remark => remark.TextContent == asked);
        var remove = page.QuerySelector("#photo-kept form[action$=withdraw]")!;
        await app.PostForRedirectAsync(remove.GetAttribute("action")!, ("reason", remove.QuerySelector("button")!.GetAttribute("value")!));
        Assert.Empty(app.Inspection().Photos);
    }

    [Fact]
    public async Task Good_photo_is_not_asked_about()
    {
        await using var app = await TestApp.StartAsync(photos: () => new Judge(new() { Sharpness = new(1.95, null) }));
        var bench = await app.StartInspectionAsync();
        await app.KeepPhotoAsync(bench);

        var page = await app.PageAsync(bench);

        Assert.Null(page.QuerySelector(".photo-remark"));
        Assert.Null(page.QuerySelector("#photo-kept form[action$=withdraw]"));
    }

    [Fact]
    public async Task Page_of_a_photo_tells_when_and_by_what_it_was_taken_and_the_skew()
    {
        await using var app = await TestApp.StartAsync(photos: () => new Judge(new()
        {
            Camera = new CameraFacts { Taken = new DateTime(2020, 5, 3, 14, 7, 9, DateTimeKind.Unspecified), Model = "P2", Exposure = 0.01 },
        }));
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench);

        var facts = (await app.PageAsync($"{bench}/photos/{photo.Sequence}")).QuerySelector("dl.facts")!.TextContent;

        Assert.Contains("3 May 2020, 14:07:09 by the camera's own clock", facts, StringComparison.Ordinal);
        Assert.Contains("before it was kept by this computer's clock", facts, StringComparison.Ordinal);
        Assert.Contains("1/100 s", facts, StringComparison.Ordinal);
        Assert.Contains("P2", facts, StringComparison.Ordinal);
    }

    private sealed class Judge(Figures figures) : IPhotoDeveloper
    {
        public Task<PhotoAnswer> DevelopAsync(PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken) =>
            Task.FromResult<PhotoAnswer>(PhotoDeveloper.Develop(work, original) is PhotoAnswer.Copies copies
                ? copies with { Figures = copies.Figures with { Sharpness = figures.Sharpness, Camera = figures.Camera } }
                : throw new InvalidOperationException("It is no photo."));
    }

    private sealed record Figures
    {
        public PhotoSharpness? Sharpness { get; init; }

        public CameraFacts? Camera { get; init; }
    }
}
