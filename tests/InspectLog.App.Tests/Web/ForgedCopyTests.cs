using InspectLog.App.Media;
using InspectLog.App.Tests.Commands;

namespace InspectLog.App.Tests.Web;

/// <summary>Copies of photos that somebody put in the place of those the program made.</summary>
public sealed class ForgedCopyTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("display")]
    [InlineData("thumbnail")]
    [InlineData("print")]
    public async Task Overwritten_copy_is_not_shown_but_made_anew(string kind)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var sha256 = (await app.KeepPhotoAsync(bench)).Photo.Media.Sha256;
        var address = $"/photos/{sha256}/{kind}";
        var copy = await app.Client.GetByteArrayAsync(address, Stop);
        var file = FileOf(app, sha256, kind);
        Assert.Equal(copy, await File.ReadAllBytesAsync(file, Stop));

        await File.WriteAllBytesAsync(file, PhotoSending.Picture(300), Stop);

        Assert.Equal(copy, await app.Client.GetByteArrayAsync(address, Stop));
        Assert.Equal(copy, await File.ReadAllBytesAsync(file, Stop));
    }

    [Fact]
    public async Task Copies_and_slip_of_another_photo_are_not_shown()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var own = (await app.KeepPhotoAsync(bench, width: 64)).Photo.Media.Sha256;
        var other = (await app.KeepPhotoAsync(bench, width: 90)).Photo.Media.Sha256;
        var copy = await app.Client.GetByteArrayAsync($"/photos/{own}/display", Stop);

        File.Copy(FileOf(app, other, "display"), FileOf(app, own, "display"), overwrite: true);
        File.Copy(SlipOf(app, other), SlipOf(app, own), overwrite: true);

        Assert.Equal(copy, await app.Client.GetByteArrayAsync($"/photos/{own}/display", Stop));
    }

    [Fact]
    public async Task Original_that_is_no_longer_what_was_sent_is_not_shown_in_its_place()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var sha256 = (await app.KeepPhotoAsync(bench)).Photo.Media.Sha256;
        var before = await app.Client.GetByteArrayAsync($"/photos/{sha256}/display", Stop);
        await File.WriteAllBytesAsync(Path.Combine(app.Garage.Folder, "media", sha256[..2], sha256), PhotoSending.Picture(300), Stop);
        Assert.Equal(before, await app.Client.GetByteArrayAsync($"/photos/{sha256}/display", Stop));

        File.Delete(FileOf(app, sha256, "display"));

        var answer = await app.Client.GetAsync($"/photos/{sha256}/display", Stop);
        Assert.Equal(System.Net.HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    [Fact]
    public async Task Verify_names_the_copy_that_was_changed()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var sha256 = (await app.KeepPhotoAsync(bench)).Photo.Media.Sha256;
        Assert.Equal(0, (await CommandRun.OfAsync("verify", app.Folder)).ExitCode);

        await File.WriteAllBytesAsync(FileOf(app, sha256, "thumbnail"), PhotoSending.Picture(300), Stop);
        var run = await CommandRun.OfAsync("verify", app.Folder);
        var json = await CommandRun.OfAsync("verify", app.Folder, "--json");

        Assert.Equal((1, 1), (run.ExitCode, json.ExitCode));
        Assert.Contains($"copies/{sha256[..2]}/{sha256}-thumbnail.jpg: NOT the copy", run.Out, StringComparison.Ordinal);
        Assert.Contains($$"""{"copy":"{{sha256[..2]}}/{{sha256}}-thumbnail.jpg","intact":false}""", json.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("""{"version":1,"original":"x"}""")]
    public async Task Slip_that_is_none_has_the_copies_made_anew(string slip)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var sha256 = (await app.KeepPhotoAsync(bench)).Photo.Media.Sha256;
        var copy = await app.Client.GetByteArrayAsync($"/photos/{sha256}/display", Stop);

        await File.WriteAllTextAsync(SlipOf(app, sha256), slip, Stop);

        Assert.Equal(copy, await app.Client.GetByteArrayAsync($"/photos/{sha256}/display", Stop));
        Assert.NotNull(CopyFiles.In(app.Folder).SlipOf(sha256));
    }

    [Fact]
    public async Task Copies_of_versions_before_slips_are_removed()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-test-");
        var copies = folder.CreateSubdirectory("copies");
        var former = Path.Combine(copies.FullName, $"{new string('a', 64)}-1600.jpg");
        await File.WriteAllBytesAsync(former, PhotoSending.Picture(), Stop);

        CopyFiles.In(folder.FullName).RemoveFormer();

        Assert.False(File.Exists(former));
        Assert.Empty(CopyFiles.In(folder.FullName).Misfits());
        folder.Delete(recursive: true);
    }

    private static string FileOf(TestApp app, string sha256, string kind) =>
        Path.Combine(app.Folder, "copies", sha256[..2], $"{sha256}-{kind}.jpg");

    private static string SlipOf(TestApp app, string sha256) => Path.Combine(app.Folder, "copies", sha256[..2], $"{sha256}.json");
}
