using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>Writing to the disk fails while the program runs: what failed is closed and says so, and the rest is worked on.
/// </summary>
public sealed class FailedWriteTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-failed-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task One_journal_that_cannot_be_written_closes_its_vehicle_only()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        await app.AddVehicleAsync("Heron");
        await app.AddVehicleAsync("Teasel");
        File.AppendAllText(Path.Combine(_folder.FullName, "vehicles", "teasel", "journal.jsonl"), "another program wrote this");

        var refused = await app.PostAsync("/vehicles/teasel/describe", ("name", "Teasel II"));

        Assert.Equal(HttpStatusCode.ServiceUnavailable, refused.StatusCode);
        var garage = await app.PageAsync("/");
        var card = garage.QuerySelectorAll(".vehicle-card").Single(one => one.TextContent.Contains("Teasel", StringComparison.Ordinal));
        Assert.Contains("Writing its journal failed: it can be looked at", card.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing can be saved", garage.QuerySelector(".banner")!.TextContent, StringComparison.Ordinal);
        var vehicle = (await app.PageAsync("/vehicles/teasel")).QuerySelector("main")!;
        Assert.Contains("This vehicle can only be looked at", vehicle.TextContent, StringComparison.Ordinal);
        Assert.Contains("Writing the journal of Teasel failed", vehicle.TextContent, StringComparison.Ordinal);
        Assert.Contains("Other vehicles can be worked on", vehicle.TextContent, StringComparison.Ordinal);
        await app.PostForRedirectAsync("/vehicles/heron/inspections", ("technician", "Tess Okafor"));
    }

    [Fact]
    public async Task Media_that_cannot_be_written_leave_typed_entries_to_go_on()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        var bench = await app.PostForRedirectAsync($"{await app.AddVehicleAsync("Heron")}/inspections", ("technician", "Tess Okafor"));
        File.WriteAllText(Path.Combine(_folder.FullName, "media", "incoming"), "a file where a folder should be");

        var refused = Assert.Throws<Journal.JournalReadOnlyException>(() => app.Garage.Media.Keep("sound"u8, "audio/wav"));

        Assert.Contains("no recordings and photos can be kept", refused.Message, StringComparison.Ordinal);
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Goes on all the same."));
        var banner = (await app.PageAsync(bench)).QuerySelector(".banner")!.TextContent;
        Assert.Contains("no recordings and photos can be kept until InspectLog is started again", banner, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing can be saved", banner, StringComparison.Ordinal);
    }
}
