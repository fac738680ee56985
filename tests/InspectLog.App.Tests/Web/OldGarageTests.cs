using InspectLog.Inspecting;
using InspectLog.Measuring;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Web;

/// <summary>A garage written by the version before amendments, in the pages of this one. What its entries say is held by
/// the journal's own tests.</summary>
public sealed class OldGarageTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-test-");

    public OldGarageTests()
    {
        var kept = Repository.PathOf("tests", "InspectLog.Journal.Tests", "TestData", "before-amendments");
        foreach (var file in Directory.GetFiles(kept, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(_folder.FullName, Path.GetRelativePath(kept, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Inspections_are_read_with_the_very_sheet_they_pinned()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        var scenes = app.Garage.Vehicles()
            .SelectMany(one => app.Garage.FindVehicle(one.Id)!.Inspections.Select(inspection =>
                BenchScene.Find(app.Garage, SheetLibrary.BuiltIn, one.Id, inspection.Number)!))
            .ToList();

        Assert.Equal(8, scenes.Count);
        Assert.All(scenes, scene =>
        {
            Assert.Equal(("ignition-breakerless-6", 2), (scene.Sheet.Id, scene.Sheet.Version));
            Assert.Equal(scene.Inspection.How.SheetSha256, scene.Sheet.Sha256);
            Assert.All(scene.Inspection.Readings, one => Assert.NotNull(scene.Sheet.Find(one.Body.Check)));
            Assert.All(scene.Inspection.Observations, one => Assert.Contains(
                scene.Sheet.Find(one.Body.Check)!.Conditions, condition => condition.Id == one.Body.Condition));
        });
    }

    [Fact]
    public async Task Every_page_of_it_opens_and_shows_what_was_decided()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        foreach (var vehicle in app.Garage.Vehicles())
        {
            await app.PageAsync($"/vehicles/{vehicle.Id}");
            await app.PageAsync($"/vehicles/{vehicle.Id}/journal");
            foreach (var inspection in app.Garage.FindVehicle(vehicle.Id)!.Inspections)
            {
                await app.PageAsync($"/vehicles/{vehicle.Id}/inspections/{inspection.Number}");
                var report = (await app.PageAsync($"/vehicles/{vehicle.Id}/inspections/{inspection.Number}/report")).Body!.TextContent;
                Assert.All(inspection.Readings.Where(one => one.Body.Conformity is not null), one => Assert.Contains(
                    one.Body.Conformity!.Decision.Words(), report, StringComparison.OrdinalIgnoreCase));
            }
        }
    }
}
