using System.IO.Compression;
using System.Net;
using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Tests.Web;

/// <summary>Photos that were accepted and cannot be shown: kept, and said at once.</summary>
public sealed class UnshownPhotoTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Photo_that_cannot_be_shown_is_kept_and_whoever_sent_it_is_told_at_once()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var file = Undecodable();
        app.Client.DefaultRequestHeaders.Add("HX-Request", "true");

        var answer = await app.SendPhotoAsync(bench, file);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        const string told = "Kept, but cannot be shown: part of the picture is damaged. Take it again.";
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains(told, page.QuerySelector("#photo-kept .line")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(told, page.QuerySelector("#photo-kept")!.GetAttribute("data-sentence"), StringComparison.Ordinal);
        var sha256 = Assert.Single(app.Inspection().Photos).Photo.Media.Sha256;
        Assert.Equal(file, await app.Client.GetByteArrayAsync($"/media/{sha256}", Stop));
    }

    [Fact]
    public async Task Photo_that_cannot_be_shown_is_removed_in_one_press()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.SendPhotoAsync(bench, Undecodable());
        var form = (await app.PageAsync(bench)).QuerySelector("#photo-kept form[action$=withdraw]")!;
        var reason = form.QuerySelector("button")!.GetAttribute("value")!;

        await app.PostForRedirectAsync(form.GetAttribute("action")!, ("reason", reason));

        Assert.Empty(app.Inspection().Photos);
        Assert.Equal("cannot be shown", Assert.IsType<Journal.State.PhotoCapture>(app.Inspection().Everything[^1]).History.Withdrawn!.Reason);
    }

    [Fact]
    public async Task Photo_that_took_too_long_is_tried_again_by_a_press_and_shown()
    {
        var developer = new SlowOnce();
        await using var app = await TestApp.StartAsync(photos: () => developer);
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench);
        var address = $"{bench}/photos/{photo.Sequence}";
        var display = $"/photos/{photo.Photo.Media.Sha256}/display";
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.Client.GetAsync(display, Stop)).StatusCode);
        Assert.Contains("making it ready takes too long", (await app.PageAsync(address)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(1, developer.Asked);

        Assert.Equal($"{address}?to=captured", await app.PostForRedirectAsync($"{address}/show", ("viewer", "?to=captured")));

        Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync(display, Stop)).StatusCode);
        Assert.DoesNotContain("cannot be shown", (await app.PageAsync(address)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photo_is_kept_and_shown_later_where_nothing_can_be_developed_now()
    {
        await using var app = await TestApp.StartAsync(photos: () => new NeverNow());
        var bench = await app.StartInspectionAsync();

        var photo = await app.KeepPhotoAsync(bench);

        var answer = await app.Client.GetAsync($"/photos/{photo.Photo.Media.Sha256}/display", Stop);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        Assert.Null((await app.PageAsync(bench)).QuerySelector(".photo-remark"));
    }

    [Fact]
    public async Task Picture_of_a_vehicle_that_cannot_be_shown_is_told_at_once()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        using var form = new MultipartFormDataContent { { new ByteArrayContent(Undecodable()), "photo", "car.png" } };

        var answer = await app.Client.PostAsync($"{vehicle}/picture", form, Stop);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("cannot be shown", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>A PNG, whole and with right checksums, whose rows are filtered in a way that there is not.</summary>
    private static byte[] Undecodable()
    {
        const int size = 8;
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            zlib.Write([.. Enumerable.Repeat((byte)9, (size + 1) * size)]);
        }

        byte[] file =
        [
            0x89, .. "PNG\r\n\x1A\n"u8,
            .. Chunk("IHDR"u8, [0, 0, 0, size, 0, 0, 0, size, 8, 0, 0, 0, 0]), .. Chunk("IDAT"u8, packed.ToArray()), .. Chunk("IEND"u8, []),
        ];
        Assert.IsType<PhotoResult.Ok>(PhotoIntake.Examine(file));
        return file;
    }

    private static byte[] Chunk(ReadOnlySpan<byte> type, byte[] data)
    {
        byte[] body = [.. type, .. data];
        var crc = uint.MaxValue;
        foreach (var next in body)
        {
            crc ^= next;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320u);
            }
        }

        crc = ~crc;
        return [0, 0, 0, (byte)data.Length, .. body, (byte)(crc >> 24), (byte)(crc >> 16), (byte)(crc >> 8), (byte)crc];
    }

    private sealed class SlowOnce : IPhotoDeveloper
    {
        public int Asked { get; private set; }

        public Task<PhotoAnswer> DevelopAsync(PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken) =>
            Task.FromResult(Asked++ == 0 ? new PhotoAnswer.NotShown(PhotoFault.TooSlow) : PhotoDeveloper.Develop(work, original));
    }

    private sealed class NeverNow : IPhotoDeveloper
    {
        public Task<PhotoAnswer> DevelopAsync(PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken) =>
            Task.FromResult<PhotoAnswer>(new PhotoAnswer.NotNow());
    }
}
