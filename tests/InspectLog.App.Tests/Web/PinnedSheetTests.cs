using System.Net;
using System.Text;
using InspectLog.Checks;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>An inspection is read with the very sheet it pins; one that is missing is said, never replaced.</summary>
public sealed class PinnedSheetTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.All[0];

    private static readonly string Bench = Links.Inspection("marigold", 2);

    [Fact]
    public async Task Sheet_is_kept_when_an_inspection_starts()
    {
        await using var app = await TestApp.StartAsync();

        await app.StartInspectionAsync();

        Assert.Equal(
            BuiltInSheets.FileOf(Sheet.Sha256)!.Value.ToArray(),
            await File.ReadAllBytesAsync(FileOf(app, Sheet.Sha256), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Old_journal_is_read_with_the_version_it_pins()
    {
        await using var app = await TestApp.StartAsync();
        var old = BuiltInSheets.FindExact("498186981c26035753e46f0d47d69a9d5beeb1b242639dfa45ab6f0d0e28186f")!;
        await StartWithAsync(app, old.Id, 2, old.Sha256);

        var page = await app.PageAsync($"{Bench}/report");

        Assert.Contains("Sheet ignition-breakerless-6, version 2", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(6, (await app.PageAsync($"{Bench}?check=lead-condition")).QuerySelectorAll("#observe-cylinder input").Length);
        Assert.Contains("six cylinders", (await app.PageAsync($"/sheets/{old.Id}?sha256={old.Sha256}")).Title!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Missing_sheet_is_said_on_every_page_of_the_inspection_and_back_when_its_file_is()
    {
        var (file, sha256) = OwnSheet();
        var folder = Directory.CreateTempSubdirectory("inspectlog-test-");
        var before = await TestApp.StartAsync(folder: folder.FullName);
        await StartWithAsync(before, Sheet.Id, 9, sha256);
        await File.WriteAllBytesAsync(FileOf(before, sha256), file, TestContext.Current.CancellationToken);
        before.Garage.Append("marigold", "Tess Okafor", _ => [new ObservationMade(2, "lead-condition", 3, "burnt", false, null)]);
        File.Delete(FileOf(before, sha256));
        await before.StopAsync(); // a sheet that was read once is remembered
        var app = await TestApp.StartAsync(folder: folder.FullName);

        foreach (var address in new[] { Bench, $"{Bench}/report", "/vehicles/marigold/journal" })
        {
            var text = (await app.PageAsync(address)).Body!.TextContent;
            Assert.Contains($"the check sheet {Sheet.Id}, version 9, and that very sheet is not there", text, StringComparison.Ordinal);
            Assert.Contains($"{sha256}.json", text, StringComparison.Ordinal);
            Assert.Contains("burnt", text, StringComparison.Ordinal); // what was recorded can be read
        }

        var answer = await app.PostAsync($"{Bench}/observations", ("check", "lead-condition"), ("cylinder", "1"), ("condition", "good"));
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("its check sheet is missing", (await app.PageAsync("/vehicles/marigold")).Body!.TextContent, StringComparison.Ordinal);

        await File.WriteAllBytesAsync(FileOf(app, sha256), file, TestContext.Current.CancellationToken);

        Assert.Contains("Sheet of our own", (await app.PageAsync($"{Bench}/report")).Body!.TextContent, StringComparison.Ordinal);

        await app.DisposeAsync();
        folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("")]
    public async Task File_with_other_bytes_under_its_name_is_not_used(string bytes)
    {
        await using var app = await TestApp.StartAsync();
        var (_, sha256) = OwnSheet();
        await StartWithAsync(app, Sheet.Id, 9, sha256);
        await File.WriteAllTextAsync(FileOf(app, sha256), bytes, TestContext.Current.CancellationToken);

        Assert.Contains("The check sheet is missing", (await app.PageAsync(Bench)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limits_of_before_hold_for_the_sheet_that_goes_on_and_go_when_they_are_cleared()
    {
        const string Address = "/vehicles/marigold/limits/plug-gap?sheet=ignition-breakerless";
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        app.Garage.Append("marigold", "Tess Okafor", _ => [new LimitsSet("plug-gap", 0.7, 0.75, "Old booklet")]);
        Assert.Contains("Old booklet", await CheckAsync(app, bench), StringComparison.Ordinal);

        await app.PostForRedirectAsync(Address, ("lower", "0.8"), ("upper", "0.85"), ("unit", "mm"), ("source", "New booklet"));
        Assert.Contains("New booklet", await CheckAsync(app, bench), StringComparison.Ordinal);

        await app.PostForRedirectAsync(Address, ("clear", "on"));
        Assert.Contains("Common practice, no source", await CheckAsync(app, bench), StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Limits);
    }

    [Fact]
    public async Task Limits_of_another_sheet_do_not_hold()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        app.Garage.Append("marigold", "Tess Okafor", _ => [new LimitsSet("plug-gap", 0.7, 0.75, "Mower booklet") { Sheet = "mower" }]);

        Assert.DoesNotContain("Mower booklet", await CheckAsync(app, bench), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync(
            "/vehicles/marigold/limits/plug-gap?sheet=mower", TestContext.Current.CancellationToken)).StatusCode);
    }

    private static async Task<string> CheckAsync(TestApp app, string bench)
    {
        await app.PostForRedirectAsync($"{bench}/readings", ("check", "plug-gap"), ("cylinder", "1"), ("value", "0.82"), ("unit", "mm"));
        return app.Garage.FindVehicle("marigold")!.OpenInspection!.Readings[^1].Body.Limits!.Source;
    }

    /// <summary>A sheet that is not built in: the built-in one under another title.</summary>
    private static (byte[] File, string Sha256) OwnSheet()
    {
        var text = Encoding.UTF8.GetString(BuiltInSheets.FileOf(Sheet.Sha256)!.Value.Span)
            .Replace("\"Breakerless ignition\"", "\"Sheet of our own\"", StringComparison.Ordinal);
        var file = Encoding.UTF8.GetBytes(text);
        return (file, CheckSheetFile.Parse(file).Sha256);
    }

    private static string FileOf(TestApp app, string sha256) => Path.Combine(app.Folder, "sheets", $"{sha256}.json");

    private static async Task StartWithAsync(TestApp app, string sheet, int version, string sha256)
    {
        await app.AddVehicleAsync();
        app.Garage.Append(
            "marigold", "Tess Okafor", _ => [new InspectionStarted(sheet, version, sha256, "Tess Okafor", null, null)]);
    }
}
