using InspectLog.App.Tests.Commands;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>What the verb <c>report</c> refuses, and what it takes.</summary>
public sealed class ReportVerbTests(DemoReports demo) : IClassFixture<DemoReports>, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    private string To => Path.Combine(_folder.FullName, "report.pdf");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("pdf")]
    [InlineData("html")]
    public async Task File_that_is_there_is_not_overwritten(string ending)
    {
        var file = Path.Combine(_folder.FullName, $"mine.{ending}");
        await File.WriteAllTextAsync(file, "mine", TestContext.Current.CancellationToken);

        var run = await RunAsync("teasel", file);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("is there already, and nothing is overwritten", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("nettle", "Those there are: marigold, teasel.", "report.pdf")]
    [InlineData("teasel", "ends in neither", "report.doc")]
    [InlineData("teasel", "ends in neither", "report")]
    [InlineData("teasel", "There is no folder", "missing/report.pdf")]
    [InlineData("teasel", "--to needs the name of a file.", "")]
    public async Task What_cannot_be_is_refused_with_what_to_do(string vehicle, string says, string file)
    {
        var run = await RunAsync(vehicle, file.Length == 0 ? "" : Path.Combine(_folder.FullName, file));

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Empty(_folder.GetFileSystemInfos());
    }

    [Fact]
    public async Task Inspection_that_is_not_there_is_named_with_those_there_are()
    {
        var run = await RunAsync("teasel", To, "--inspection", "99999");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Teasel has no inspection 99999. Those there are: ", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(To));
    }

    [Fact]
    public async Task Inspection_is_chosen_by_its_number_an_open_one_too()
    {
        var vehicle = Journal.Verification.VehicleReading.Of(demo.Garage, "marigold").Entries
            .Aggregate(Journal.State.VehicleState.Before("marigold"), (state, entry) => state.Apply(entry));
        var open = vehicle.Inspections.First(inspection => !inspection.IsClosed);

        var run = await RunAsync("marigold", To, "--inspection", $"{open.Number}");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("This inspection is not closed", Poppler.Text(To), StringComparison.Ordinal);
        Assert.DoesNotContain("This inspection is not closed", Poppler.Text(await demo.FileAsync("marigold", "pdf")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_record_at_the_same_time_makes_the_same_bytes()
    {
        var (first, second) = (Path.Combine(_folder.FullName, "1.pdf"), Path.Combine(_folder.FullName, "2.pdf"));

        await AtNoonAsync(first);
        await AtNoonAsync(second);

        Assert.Equal(await File.ReadAllBytesAsync(first, TestContext.Current.CancellationToken), await File.ReadAllBytesAsync(second, TestContext.Current.CancellationToken));
        Assert.Contains("Jan  1 12:00:00 2027", Poppler.Info(first)["CreationDate"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_written_into_the_data_folder()
    {
        IReadOnlyList<string> Files() => [.. Directory.GetFiles(demo.Garage, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(file => $"{file} {File.GetLastWriteTimeUtc(file):O}")];
        var before = Files();

        var run = await RunAsync("teasel", To);

        Assert.Equal(0, run.ExitCode);
        Assert.Equal(before, Files());
    }

    private Task<CommandRun> RunAsync(string vehicle, string to, params string[] further) =>
        CommandRun.OfAsync(["report", "--data", demo.Garage, "--vehicle", vehicle, "--to", to, .. further]);

    private async Task AtNoonAsync(string to)
    {
        using var output = new StringWriter();
        var clock = new Microsoft.Extensions.Time.Testing.FakeTimeProvider(new DateTimeOffset(2027, 1, 1, 12, 0, 0, TimeSpan.Zero));
        var surroundings = App.Commands.Surroundings.OfProcess() with { Out = output, Error = output, Time = clock, OpenPhotos = () => new Photos.Developing.PhotoDeveloper() };
        Assert.Equal(0, await App.Commands.CommandLine.RunAsync(["report", "--data", demo.Garage, "--vehicle", "teasel", "--to", to], surroundings));
    }
}
