using System.Text;
using AngleSharp.Html.Parser;
using InspectLog.App.Demo;
using InspectLog.App.Tests.Commands;
using InspectLog.Journal.Verification;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Archiving;

/// <summary>The invented garage given away and taken in on the command line.</summary>
public sealed class ArchiveVerbsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Garage => Path.Combine(_folder.FullName, "garage");

    private string To => Path.Combine(_folder.FullName, "archives");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Vehicle_is_exported_verified_and_imported_with_reports_that_open_by_themselves()
    {
        DemoGarage.Make(Garage, new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 14, 0, 0, TimeSpan.Zero)), App.Demo.DemoFiles.Shipped());

        var export = await CommandRun.OfAsync("export", "--data", Garage, "--vehicle", "teasel", "--to", To, "--profile", "buyer");
        var archive = export.Out.TrimEnd();
        var verify = await CommandRun.OfAsync("verify", archive);
        var import = await CommandRun.OfAsync("import", archive, "--data", Path.Combine(_folder.FullName, "other"));

        Assert.Equal((0, "Not sealed.\n", 0, 0), (export.ExitCode, export.Error, verify.ExitCode, import.ExitCode));
        Assert.Contains("Withheld: ", verify.Out, StringComparison.Ordinal);
        Assert.Contains("Teasel is not in this garage yet. It is added", import.Out, StringComparison.Ordinal);
        var reports = Directory.GetFiles(Path.Combine(archive, "data", "reports"));
        Assert.Equal(3, reports.Length);
        await HoldsNothingFromOutsideAsync(reports);
        var readings = await File.ReadAllTextAsync(Path.Combine(archive, "data", "readings.csv"), Encoding.UTF8, Stop);
        var count = VehicleReading.Of(Garage, "teasel").Entries.Count(entry => entry.Body is Journal.Entries.ReadingDecided { Amends: null });
        Assert.True(count > 10);
        Assert.Equal(count + 1, readings.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);

        await File.AppendAllTextAsync(Path.Combine(archive, "data", "readings.csv"), "x", Stop);
        var spoilt = await CommandRun.OfAsync("verify", archive);
        var refused = await CommandRun.OfAsync("import", archive, "--data", Path.Combine(_folder.FullName, "third"));
        Assert.Equal((1, 1), (spoilt.ExitCode, refused.ExitCode));
        Assert.Contains("data/readings.csv is not what it was", spoilt.Out, StringComparison.Ordinal);
        Assert.Contains("data/readings.csv is not what it was", refused.Out, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder.FullName, "third")));
    }

    [Fact]
    public async Task Vehicle_or_archive_that_is_not_there_is_named_with_what_there_is()
    {
        using (var garage = Journal.Garage.Open(Garage, TimeProvider.System))
        {
            garage.AddVehicle("Tess Okafor", new Journal.Entries.VehicleAdded("Marigold", "", null));
        }

        var unknown = await CommandRun.OfAsync("export", "--data", Garage, "--vehicle", "teasel", "--to", To);
        var none = await CommandRun.OfAsync("import", Path.Combine(_folder.FullName, "nothing.zip"), "--data", Garage);
        var profile = await CommandRun.OfAsync("export", "--data", Garage, "--vehicle", "marigold", "--to", To, "--profile", "all");

        Assert.Equal((2, 2, 2), (unknown.ExitCode, none.ExitCode, profile.ExitCode));
        Assert.Contains("Those there are: marigold.", unknown.Error, StringComparison.Ordinal);
        Assert.Contains("There is no archive at", none.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(To));
    }

    private static async Task HoldsNothingFromOutsideAsync(IEnumerable<string> reports)
    {
        var pictures = 0;
        foreach (var report in reports)
        {
            var page = await new HtmlParser().ParseDocumentAsync(await File.ReadAllTextAsync(report, Stop), Stop);
            Assert.Contains("Condition report", page.Title, StringComparison.Ordinal);
            Assert.Empty(page.QuerySelectorAll("form, script, link, iframe, a:not([href^='#'])"));
            Assert.All(page.QuerySelectorAll("img"), image => Assert.StartsWith("data:image/jpeg;base64,/9j/", image.GetAttribute("src"), StringComparison.Ordinal));
            Assert.Contains(".report", page.QuerySelector("style")!.TextContent, StringComparison.Ordinal);
            pictures += page.QuerySelectorAll("img").Length;
        }

        Assert.True(pictures > 0);
    }
}
