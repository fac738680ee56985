using System.Net;
using InspectLog.Journal.State;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>Photos through the bench.</summary>
public sealed class PhotoTests
{
    [Fact]
    public async Task Photos_are_kept_bit_for_bit_and_shown_as_copies()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var original = Picture(640, 480);

        await SendAsync(app, bench, [("one.jpg", original), ("two.jpg", Picture(100, 80))], "cap-contacts", "2");

        var photos = Inspection(app).Photos.ToList();
        Assert.Equal(2, photos.Count);
        Assert.Equal(("cap-contacts", 2, 640), (photos[0].Photo.Check, photos[0].Photo.Cylinder, photos[0].Photo.Width));
        var sha = photos[0].Photo.Media.Sha256;
        Assert.Equal(original, await app.Client.GetByteArrayAsync($"/media/{sha}", TestContext.Current.CancellationToken));
        var thumbnail = Image.Identify(
            await app.Client.GetByteArrayAsync($"/photos/{sha}/thumbnail", TestContext.Current.CancellationToken));
        Assert.Equal(320, thumbnail.Width);
    }

    [Fact]
    public async Task Good_photos_of_a_batch_are_kept_and_the_bad_one_is_named()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await SendAsync(
            app, bench, [("good.jpg", Picture(64, 64)), ("notes.jpg", "not a photo"u8.ToArray())], "spark", "");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("notes.jpg", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Single(Inspection(app).Photos);
    }

    [Fact]
    public async Task Form_without_a_photo_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await SendAsync(app, bench, [], "spark", "");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).Photos);
    }

    [Theory]
    [InlineData("/media/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/media/..%2F..%2Fetc%2Fpasswd")]
    [InlineData("/photos/0000000000000000000000000000000000000000000000000000000000000000/display")]
    [InlineData("/photos/nonsense/thumbnail")]
    public async Task Media_that_is_not_there_is_not_found(string address)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task<HttpResponseMessage> SendAsync(
        TestApp app, string bench, (string Name, byte[] Bytes)[] photos, string check, string cylinder)
    {
        using var form = new MultipartFormDataContent
        {
            { new StringContent(check), "check" },
            { new StringContent(cylinder), "cylinder" },
        };
        foreach (var (name, bytes) in photos)
        {
            form.Add(new ByteArrayContent(bytes), "photo", name);
        }

        return await app.Client.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);
    }

    private static byte[] Picture(int width, int height)
    {
        using var image = new Image<Rgb24>(width, height, new Rgb24(120, 90, 60));
        using var bytes = new MemoryStream();
        image.SaveAsJpeg(bytes);
        return bytes.ToArray();
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
