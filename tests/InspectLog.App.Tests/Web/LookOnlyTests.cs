using System.Net;
using InspectLog.App.Tests.Commands;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>A data folder that is only looked at: every page says so, nothing is taken, and no byte of it changes.</summary>
public sealed class LookOnlyTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-look-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Folder_is_shown_searched_and_not_written()
    {
        await FillAsync();
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "vehicles", ".new-heron"));
        var before = Everything();

        await using (var app = await TestApp.StartAsync(folder: _folder.FullName, lookOnly: true))
        {
            foreach (var address in new[] { "/", "/vehicles/marigold", "/vehicles/marigold/inspections/2", "/vehicles/marigold/inspections/2/report", "/find?words=petrol" })
            {
                Assert.Contains("opened to be looked at only", (await app.PageAsync(address)).QuerySelector(".banner")!.TextContent, StringComparison.Ordinal);
            }

            Assert.Contains("petrol", (await app.PageAsync("/find?words=petrol")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
            var photo = app.Garage.FindVehicle("marigold")!.Picture!;
            Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync($"/photos/{photo.Sha256}/thumbnail", TestContext.Current.CancellationToken)).StatusCode);
        }

        Assert.Equal(before, Everything());
    }

    [Fact]
    public async Task Whatever_would_change_something_is_refused_with_words()
    {
        await FillAsync();
        await using var app = await TestApp.StartAsync(folder: _folder.FullName, lookOnly: true);

        foreach (var address in new[] { "/vehicles/new", "/vehicles/marigold/inspections/2/notes", "/words", "/losses" })
        {
            var answer = await app.PostAsync(address, ("name", "Heron"), ("text", "not now"));
            Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
            Assert.Contains("looked at only", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }

        Assert.Throws<Journal.JournalReadOnlyException>(() => app.Garage.Append("marigold", "Tess", _ => [new NoteWritten(2, null, "not now")]));
        Assert.Throws<Journal.JournalReadOnlyException>(() => app.Garage.Media.Keep("photo"u8, "image/jpeg"));
    }

    [Fact]
    public async Task Folder_that_somebody_works_in_can_be_looked_at()
    {
        await using var worked = await TestApp.StartAsync(folder: _folder.FullName);
        await worked.AddVehicleAsync("Teasel");

        await using var app = await TestApp.StartAsync(folder: _folder.FullName, lookOnly: true);

        Assert.Single((await app.PageAsync("/")).QuerySelectorAll(".vehicle-card"));
    }

    [Fact]
    public async Task Folder_that_is_none_and_an_opening_to_the_network_are_refused()
    {
        var nothing = await CommandRun.OfAsync("serve", "--read-only", "--data", Path.Combine(_folder.FullName, "nowhere"), "--port", "0");
        var network = await CommandRun.OfAsync("serve", "--read-only", "--lan", "--data", _folder.FullName);

        Assert.NotEqual(0, nothing.ExitCode);
        Assert.Contains("There is no data folder at", nothing.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder.FullName, "nowhere")));
        Assert.Equal(2, network.ExitCode);
        Assert.Contains("on this computer alone", network.Error, StringComparison.Ordinal);
    }

    private async Task FillAsync()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        await app.StartInspectionAsync();
        var photo = app.Garage.Media.Keep(PhotoSending.Picture(), "image/jpeg");
        app.Garage.Append("marigold", "Tess Okafor", _ => [new VehiclePictured(photo), new NoteWritten(2, null, "Smells of petrol")]);
    }

    /// <summary>Names, lengths, times and bytes of all there is in the folder.</summary>
    private List<string> Everything() =>
    [
        .. _folder.EnumerateFileSystemInfos("*", SearchOption.AllDirectories)
            .OrderBy(one => one.FullName, StringComparer.Ordinal)
            .Select(one => $"{one.FullName} {one.LastWriteTimeUtc:O} {(one is FileInfo file ? Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file.FullName))) : "")}"),
    ];
}
