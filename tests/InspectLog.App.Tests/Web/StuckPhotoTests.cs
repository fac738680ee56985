using System.Diagnostics;
using System.IO.Compression;
using System.Net;
using InspectLog.Journal.Entries;
using InspectLog.Photos.Worker;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>A picture that stops the decoder holds up neither other pictures nor the program.</summary>
public sealed class StuckPhotoTests
{
    [Fact]
    public async Task Interlaced_picture_that_ends_early_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var form = new MultipartFormDataContent { { new ByteArrayContent(EndsEarly()), "photo", "small.png" } };

        var answer = await app.Client.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("part of the picture is missing", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Photos);
    }

    [Fact]
    public async Task Garage_that_holds_such_a_picture_works_and_stops_at_once()
    {
        var app = await TestApp.StartAsync();
        try
        {
            var bench = await app.StartInspectionAsync();
            var (stuck, good) = (Keep(app, EndsEarly(), "image/png"), Keep(app, Jpeg(), "image/jpeg"));

            var answers = await Task.WhenAll(new[] { stuck, stuck, good }.Select(sha =>
                app.Client.GetAsync($"/photos/{sha}/thumbnail", TestContext.Current.CancellationToken)));

            Assert.Equal(
                [HttpStatusCode.UnprocessableEntity, HttpStatusCode.UnprocessableEntity, HttpStatusCode.OK],
                answers.Select(answer => answer.StatusCode));
            Assert.Contains(
                "cannot be shown",
                await answers[0].Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
                StringComparison.Ordinal);
            await app.PageAsync(bench);
        }
        finally
        {
            var stopping = Stopwatch.StartNew();
            await app.DisposeAsync();
            Assert.True(stopping.Elapsed < TimeSpan.FromSeconds(25), $"Stopping took {stopping.Elapsed}.");
        }
    }

    [Fact]
    public async Task Hostile_picture_is_kept_and_costs_itself_while_others_are_kept_and_shown()
    {
        await using var app = await TestApp.StartAsync(photos: () => Workers(["photos"]));
        var bench = await app.StartInspectionAsync();

        // A decoder that never returns on pictures 61 wide.
        var hostile = app.SendPhotoAsync(bench, PhotoSending.Picture(61));
        foreach (var width in new[] { 70, 71, 72 })
        {
            var good = await app.SendPhotoAsync(bench, PhotoSending.Picture(width));
            Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        }

        Assert.Equal(HttpStatusCode.Redirect, (await hostile).StatusCode);
        var photos = app.Inspection().Photos.ToDictionary(photo => photo.Photo.Width, photo => photo.Photo.Media.Sha256);
        Assert.Equal([61, 70, 71, 72], photos.Keys.Order());
        foreach (var (width, sha256) in photos)
        {
            var shown = await app.Client.GetAsync($"/photos/{sha256}/display", TestContext.Current.CancellationToken);
            Assert.Equal(width == 61 ? HttpStatusCode.UnprocessableEntity : HttpStatusCode.OK, shown.StatusCode);
        }

        Assert.Equal(PhotoSending.Picture(61), await app.Client.GetByteArrayAsync($"/media/{photos[61]}", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Program_stops_at_once_while_a_picture_never_ends()
    {
        var app = await TestApp.StartAsync(photos: () => Workers(["photos"], TimeSpan.FromMinutes(4)));
        await app.StartInspectionAsync();
        var stuck = Keep(app, PhotoSending.Picture(61), "image/jpeg");
        var waiting = app.Client.GetAsync($"/photos/{stuck}/display", TestContext.Current.CancellationToken);
        await Eventually.GetAsync(() => app.IsDeveloping ? "at it" : null);

        var stopping = Stopwatch.StartNew();
        await app.DisposeAsync();

        Assert.True(stopping.Elapsed < TimeSpan.FromSeconds(25), $"Stopping took {stopping.Elapsed}.");
        await Record.ExceptionAsync(() => waiting);
    }

    [Fact]
    public async Task Photo_worker_of_the_program_itself_develops_photos()
    {
        await using var app = await TestApp.StartAsync(photos: () => new PhotoWorkers(
            new("dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), "photo-worker"]), PhotoBounds.Usual, 1, TimeProvider.System));
        var bench = await app.StartInspectionAsync();
        var photo = await app.KeepPhotoAsync(bench, width: 640);

        var copy = await app.Client.GetByteArrayAsync($"/photos/{photo.Photo.Media.Sha256}/thumbnail", TestContext.Current.CancellationToken);

        Assert.Equal(320, Image.Identify(copy).Width);
    }

    [Fact]
    public async Task Copy_that_cannot_be_kept_is_shown_all_the_same()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var good = Keep(app, Jpeg(), "image/jpeg");
        await File.WriteAllTextAsync(Path.Combine(app.Folder, "copies"), "in the way", TestContext.Current.CancellationToken);

        var copy = await app.Client.GetByteArrayAsync($"/photos/{good}/thumbnail", TestContext.Current.CancellationToken);

        Assert.Equal([0xFF, 0xD8], copy[..2]);
    }

    private static PhotoWorkers Workers(string[] arguments, TimeSpan? processor = null) => new(
        new("dotnet", [Path.Combine(AppContext.BaseDirectory, "InspectLog.TestWorker.dll"), .. arguments]),
        PhotoBounds.Usual with { Processor = processor ?? TimeSpan.FromSeconds(2) },
        2,
        TimeProvider.System);

    /// <summary>Kept as the version before would have: it was accepted once.</summary>
    private static string Keep(TestApp app, byte[] bytes, string type)
    {
        var media = app.Garage.Media.Keep(bytes, type);
        app.Garage.Append("marigold", "Tess Okafor", now =>
            [new PhotoKept(now.OpenInspection!.Number, media, 33, 21, null, null)]);
        return media.Sha256;
    }

    private static byte[] Jpeg()
    {
        using var image = new Image<Rgb24>(64, 64, new Rgb24(120, 90, 60));
        using var bytes = new MemoryStream();
        image.SaveAsJpeg(bytes);
        return bytes.ToArray();
    }

    /// <summary>33 by 21, eight bits, colour, interlaced; 100 bytes of pixels, which end early.</summary>
    private static byte[] EndsEarly()
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            zlib.Write(new byte[100]);
        }

        return
        [
            0x89, .. "PNG\r\n\x1A\n"u8,
            .. Chunk("IHDR"u8, [0, 0, 0, 33, 0, 0, 0, 21, 8, 2, 0, 0, 1]), .. Chunk("IDAT"u8, packed.ToArray()), .. Chunk("IEND"u8, []),
        ];
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
}
