using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Tests.Archiving;

/// <summary>Archives by the pages: made, downloaded, taken in.</summary>
public sealed class ArchivePagesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Archive_is_made_downloaded_also_in_parts_and_taken_into_another_garage()
    {
        await using var there = await TestApp.StartAsync();
        await using var here = await TestApp.StartAsync();
        var vehicle = await there.AddVehicleAsync();
        var file = await MakeAsync(there, vehicle, "everything");

        var whole = await there.Client.GetAsync(file, Stop);
        var bytes = await whole.Content.ReadAsByteArrayAsync(Stop);
        using var rest = new HttpRequestMessage(HttpMethod.Get, file) { Headers = { Range = new RangeHeaderValue(1000, null), IfRange = new(whole.Headers.ETag!) } };
        var part = await there.Client.SendAsync(rest, Stop);
        var looked = await SendAsync(here, bytes);
        var page = await here.PageAsync(looked.Headers.Location!.ToString());
        var taken = await here.PostForRedirectAsync(looked.Headers.Location!.ToString());

        Assert.Equal("application/zip", whole.Content.Headers.ContentType!.MediaType);
        Assert.Equal(HttpStatusCode.PartialContent, part.StatusCode);
        Assert.Equal(bytes[1000..], await part.Content.ReadAsByteArrayAsync(Stop));
        Assert.Contains("Marigold is not in this garage yet. It is added", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(vehicle, taken);
        Assert.Equal(Journal(there), Journal(here));
        Assert.True(JournalVerifier.Verify(here.Folder).IsIntact);
    }

    [Fact]
    public async Task Page_says_what_each_archive_leaves_out_and_wants_one_chosen()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var page = await app.PageAsync($"{vehicle}/archive");
        var refused = await app.PostAsync($"{vehicle}/archive", ("profile", "anybody"));

        Assert.Equal(["Everything", "For a buyer"], page.QuerySelectorAll("form h2").Select(title => title.TextContent));
        Assert.Contains("The owner’s name and contact", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.NotNull((await app.PageAsync(vehicle)).QuerySelector($"a[href='{vehicle}/archive']"));
    }

    [Fact]
    public async Task Archive_for_a_buyer_holds_no_owner_and_the_photo_only_as_a_copy()
    {
        await using var app = await TestApp.StartAsync();
        await using var buyer = await TestApp.StartAsync();
        var vehicle = await app.PostForRedirectAsync("/vehicles/new", ("name", "Marigold"), ("owner", "Ana Lindqvist"), ("cylinders", "6"));
        var photo = app.Garage.Media.Keep(await File.ReadAllBytesAsync(Demo.DemoFiles.Photo("teasel-van.jpg"), Stop), "image/jpeg");
        app.Garage.Append("marigold", "Tess Okafor", _ => [new VehiclePictured(photo)]);

        var bytes = await app.Client.GetByteArrayAsync(await MakeAsync(app, vehicle, "buyer"), Stop);
        var looked = await SendAsync(buyer, bytes);
        await buyer.PostForRedirectAsync(looked.Headers.Location!.ToString());

        using var zip = new ZipArchive(new MemoryStream(bytes));
        Assert.Single(zip.Entries, entry => entry.FullName.EndsWith($"copies/{photo.Sha256}.jpg", StringComparison.Ordinal));
        Assert.DoesNotContain(zip.Entries, entry => entry.FullName.Contains("/media/", StringComparison.Ordinal));
        using var journal = new StreamReader(zip.Entries.Single(entry => entry.Name == "journal.jsonl").Open());
        Assert.DoesNotContain("Lindqvist", await journal.ReadToEndAsync(Stop), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await buyer.Client.GetAsync($"/photos/{photo.Sha256}/thumbnail", Stop)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await buyer.Client.GetAsync($"/media/{photo.Sha256}", Stop)).StatusCode);
    }

    [Fact]
    public async Task Damaged_archive_is_refused_with_what_is_wrong_and_nothing_is_kept()
    {
        await using var app = await TestApp.StartAsync();
        var bytes = await app.Client.GetByteArrayAsync(await MakeAsync(app, await app.AddVehicleAsync(), "everything"), Stop);
        bytes[bytes.AsSpan().IndexOf("Marigold"u8)] ^= 1;

        var refused = await SendAsync(app, bytes);
        var page = await TestApp.ParseAsync(refused);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("data/journal.jsonl is not what it was", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.Combine(app.Folder, "archives-sent")));
    }

    [Fact]
    public async Task Form_without_a_file_a_file_that_is_none_and_a_broken_form_are_told_so()
    {
        await using var app = await TestApp.StartAsync();
        using var broken = new ByteArrayContent("--x\r\nContent-Disposition: form-data; name=\"archive\"; filename=\"a.zip\"\r\n\r\nPK"u8.ToArray());
        broken.Headers.ContentType = MediaTypeHeaderValue.Parse("multipart/form-data; boundary=x");

        var none = await app.PostAsync("/import");
        var text = await SendAsync(app, "no zip"u8.ToArray());
        var cut = await app.Client.PostAsync("/import", broken, Stop);

        Assert.All([none, text], answer => Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode));
        Assert.Contains("is no ZIP file", await text.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.InRange((int)cut.StatusCode, 400, 499);
    }

    [Fact]
    public async Task Archive_that_parted_is_shown_as_such_and_an_equal_one_changes_nothing()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        var bytes = await app.Client.GetByteArrayAsync(await MakeAsync(app, vehicle, "everything"), Stop);

        var equal = await app.PageAsync((await SendAsync(app, bytes)).Headers.Location!.ToString());

        Assert.Contains("All of this is here already", equal.Body!.TextContent, StringComparison.Ordinal);
        Assert.Null(equal.QuerySelector("main form"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync("/import/" + new string('0', 32))).StatusCode);
    }

    [Fact]
    public async Task Unknown_archive_is_not_found_and_names_of_files_lead_nowhere()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        Assert.All(
            [$"{vehicle}/archive/nothing", $"{vehicle}/archive/{new string('0', 32)}/file", $"{vehicle}/archive/..%2F..%2Fworkshop.jsonl/file"],
            address => Assert.Equal(HttpStatusCode.NotFound, app.Client.GetAsync(address, Stop).GetAwaiter().GetResult().StatusCode));
    }

    /// <summary>Has an archive made, and gives the address of its file.</summary>
    internal static async Task<string> MakeAsync(TestApp app, string vehicle, string profile, string passphrase = "")
    {
        var made = await app.PostForRedirectAsync($"{vehicle}/archive", ("profile", profile), ("passphrase", passphrase));
        while (true)
        {
            var page = await app.PageAsync(made);
            if (page.QuerySelector("a[download]") is { } file)
            {
                return file.GetAttribute("href")!;
            }

            Assert.Null(page.QuerySelector(".wrong"));
            await Task.Delay(50, Stop);
        }
    }

    internal static async Task<HttpResponseMessage> SendAsync(TestApp app, byte[] bytes, string printed = "")
    {
        using var form = new MultipartFormDataContent { { new StringContent(printed), "printed" }, { new ByteArrayContent(bytes), "archive", "marigold.zip" } };
        return await app.Client.PostAsync("/import", form, Stop);
    }

    private static byte[] Journal(TestApp app) => File.ReadAllBytes(Path.Combine(app.Folder, "vehicles", "marigold", "journal.jsonl"));
}
