using System.Net;
using System.Net.Http.Json;
using System.Security.Cryptography;
using System.Text.Json;
using InspectLog.App.Media;

namespace InspectLog.App.Tests.Web;

/// <summary>Photos that come in pieces, as a phone sends them once the line broke.</summary>
public sealed class PhotoPieceTests
{
    private static readonly byte[] Photo = PhotoSending.Picture(640, 480);

    private static readonly string Name = NameOf(Photo);

    [Fact]
    public async Task Photo_sent_in_pieces_is_kept_bit_for_bit_and_its_pieces_are_gone()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        Assert.Equal(0, await SendAsync(app, bench, Name, 0, []));
        Assert.Equal(1000, await SendAsync(app, bench, Name, 0, Photo[..1000]));
        Assert.Equal(Photo.Length, await SendAsync(app, bench, Name, 1000, Photo[1000..]));
        using var answer = await NameItAsync(app, bench, Name);

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var kept = Assert.Single(app.Inspection().Photos);
        Assert.Equal((Name, "cap-contacts", 2), (kept.Photo.Media.Sha256, kept.Photo.Check, kept.Photo.Cylinder));
        Assert.Equal(Photo, await app.Client.GetByteArrayAsync($"/media/{Name}", TestContext.Current.CancellationToken));
        Assert.Empty(Directory.GetFiles(Path.Combine(app.Folder, "pieces")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(999)]
    [InlineData(1001)]
    [InlineData(-1)]
    [InlineData(long.MaxValue)]
    public async Task Piece_that_does_not_go_on_from_what_is_there_is_not_taken_and_told_where_to_go_on(long at)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Name, 0, Photo[..1000]);

        Assert.Equal(1000, await SendAsync(app, bench, Name, at, Photo[1000..1500]));
    }

    [Fact]
    public async Task What_came_before_the_program_was_stopped_is_there_after_it()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-pieces-");
        try
        {
            string bench;
            await using (var app = await TestApp.StartAsync(folder: folder.FullName))
            {
                bench = await app.StartInspectionAsync();
                await SendAsync(app, bench, Name, 0, Photo[..1000]);
            }

            await using var again = await TestApp.StartAsync(folder: folder.FullName);
            Assert.Equal(1000, await SendAsync(again, bench, Name, 0, []));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Photo_that_is_not_whole_or_not_the_one_named_is_refused_in_words_and_can_be_sent_anew()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Name, 0, Photo[..1000]);

        foreach (var name in new[] { Name, NameOf([1, 2, 3]), "nonsense", "../../workshop.jsonl" })
        {
            using var answer = await NameItAsync(app, bench, name);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Contains("did not arrive whole. Send it again.", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }

        Assert.Empty(app.Inspection().Photos);
        Assert.Equal(0, await SendAsync(app, bench, Name, 0, []));
    }

    [Fact]
    public async Task Pieces_that_are_no_photo_are_refused_like_a_file()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var text = "not a photo"u8.ToArray();
        await SendAsync(app, bench, NameOf(text), 0, text);

        using var answer = await NameItAsync(app, bench, NameOf(text));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Inspection().Photos);
    }

    [Fact]
    public async Task Photo_sent_whole_and_in_pieces_with_one_capture_is_one_photo()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.SendPhotoAsync(bench, Photo, ("check", "cap-contacts"), ("cylinder", "2"), ("capture", "one-press"));
        await SendAsync(app, bench, Name, 0, Photo);

        using var answer = await NameItAsync(app, bench, Name, ("capture", "one-press"));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Single(app.Inspection().Photos);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("ABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCD")]
    public async Task Name_that_is_no_hash_is_not_found(string name)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var piece = new ByteArrayContent([1]);

        using var answer = await app.Client.PostAsync($"{bench}/photos/pieces/{name}?at=0", piece, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Piece_beyond_the_largest_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var piece = new ByteArrayContent(new byte[PhotoPieces.LargestPiece + 200_000]);

        using var answer = await app.Client.PostAsync($"{bench}/photos/pieces/{Name}?at=0", piece, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Equal(0, await SendAsync(app, bench, Name, 0, []));
    }

    private static string NameOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static async Task<long> SendAsync(TestApp app, string bench, string name, long at, byte[] piece)
    {
        using var body = new ByteArrayContent(piece);
        using var answer = await app.Client.PostAsync($"{bench}/photos/pieces/{name}?at={at}", body, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken)).GetProperty("have").GetInt64();
    }

    private static async Task<HttpResponseMessage> NameItAsync(TestApp app, string bench, string name, params IReadOnlyList<(string Name, string Value)> more)
    {
        using var form = new FormUrlEncodedContent(
            [new("piece", name), new("check", "cap-contacts"), new("cylinder", "2"), .. more.Select(one => KeyValuePair.Create(one.Name, one.Value))]);
        return await app.Client.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);
    }
}
