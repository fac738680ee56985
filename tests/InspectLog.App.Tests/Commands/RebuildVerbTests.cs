using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Commands;

public sealed class RebuildVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Deleted_index_is_made_again()
    {
        AddVehicle("Marigold");
        var before = _folder.GetFiles("*", SearchOption.AllDirectories).Select(file => file.FullName).ToList();
        foreach (var index in before.Where(file => Path.GetFileName(file).Contains("index", StringComparison.Ordinal)))
            File.Delete(index);

        var run = await CommandRun.OfAsync("rebuild", "--data", _folder.FullName);

        Assert.Equal((0, "The index of 1 vehicle is made again.", ""), (run.ExitCode, run.Out.Trim(), run.Error));
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);
        Assert.Equal("Marigold", Assert.Single(garage.Search("marigold")).VehicleName);
    }

    [Fact]
    public async Task Missing_folder_is_refused_and_not_made()
    {
        var missing = Path.Combine(_folder.FullName, "nowhere");

        var run = await CommandRun.OfAsync("rebuild", "--data", missing);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("There is no folder", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(missing));
    }

    [Fact]
    public async Task Folder_in_use_is_left_alone()
    {
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);

        var run = await CommandRun.OfAsync("rebuild", "--data", _folder.FullName);

        Assert.Equal((3, ""), (run.ExitCode, run.Out));
        Assert.NotEmpty(run.Error);
    }

    private void AddVehicle(string name)
    {
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);
        garage.AddVehicle("Tess Okafor", new VehicleAdded(name, "", null));
    }
}
