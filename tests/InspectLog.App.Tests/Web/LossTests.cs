using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>A journal that lacks what was noted of it: said on every page at every start, until somebody deals with it.</summary>
public sealed class LossTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-loss-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Vehicle_that_is_gone_is_missed_at_every_start_until_somebody_goes_on_without_it()
    {
        await using (var app = await TestApp.StartAsync(folder: _folder.FullName))
        {
            await app.AddVehicleAsync("Teasel");
            await app.AddVehicleAsync("Heron");
        }

        Directory.Delete(Path.Combine(_folder.FullName, "vehicles", "teasel"), recursive: true);
        for (var start = 0; start < 2; start++)
        {
            await using var app = await TestApp.StartAsync(folder: _folder.FullName);
            foreach (var address in new[] { "/", "/vehicles/heron", "/instruments" })
            {
                var banner = (await app.PageAsync(address)).QuerySelector(".banner")!;
                Assert.Contains("The journal of the vehicle \"teasel\" is missing or empty, and 1 entry is noted", banner.TextContent, StringComparison.Ordinal);
                Assert.Equal("/losses", banner.QuerySelector("a")!.GetAttribute("href"));
            }
        }

        await using var again = await TestApp.StartAsync(folder: _folder.FullName);
        var form = (await again.PageAsync("/losses")).QuerySelector("main form")!;
        var fields = form.QuerySelectorAll("input").Select(input => (input.GetAttribute("name")!, input.GetAttribute("value")!)).ToArray();
        Assert.Equal("/losses", await again.PostForRedirectAsync("/losses", fields));
        Assert.Equal("/losses", await again.PostForRedirectAsync("/losses", fields)); // pressed twice
        Assert.Null((await again.PageAsync("/")).QuerySelector(".banner"));
        Assert.Contains("every journal holds", (await again.PageAsync("/losses")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(1, File.ReadAllText(Path.Combine(_folder.FullName, "workshop.jsonl")).Split("loss-accepted").Length - 1);
    }

    [Fact]
    public async Task What_is_no_loss_cannot_be_gone_on_without()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        await app.AddVehicleAsync("Teasel");

        var answer = await app.PostAsync("/losses", ("vehicle", "teasel"), ("entries", "1"), ("head", new string('a', 64)));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Single(app.Garage.Workshop.Noted.Vehicles);
    }
}
