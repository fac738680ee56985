using System.Text;
using System.Text.Json;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Commands;

/// <summary>Erasing a person on the command line: first a list, and with --yes it is done.</summary>
public sealed class EraseVerbTests : IDisposable
{
    private const string Person = "Ana Lindqvist";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public EraseVerbTests()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);
        garage.AddVehicle(
            "Tess Okafor",
            new VehicleAdded("Marigold", "", null),
            new PrivateFactsNoted(Person, "0151 496 0000", "ZZ-000-42"),
            new NoteWritten(0, null, $"{Person} rang about the tank"));
    }

    private string Data => Path.Combine(_folder.FullName, "garage");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task What_goes_is_listed_first_and_erased_when_that_is_confirmed()
    {
        var listed = await RunAsync();
        Assert.Equal(0, listed.ExitCode); // a slow opening tells on the other stream how far it is
        Assert.Contains("#2, private facts", listed.Out, StringComparison.Ordinal);
        Assert.Contains("give the same command with --yes", listed.Out, StringComparison.Ordinal);
        Assert.Contains("No backup of this garage is known", listed.Out, StringComparison.Ordinal);
        Assert.NotEmpty(FilesWith("Lindqvist"));

        var erased = await RunAsync("--yes", "--asked-by", "the former owner, by letter");
        var verify = await CommandRun.OfAsync("verify", Data);
        var json = await CommandRun.OfAsync("verify", Data, "--json");

        Assert.Equal((0, 0), (erased.ExitCode, verify.ExitCode));
        Assert.Empty(FilesWith("Lindqvist"));
        Assert.Empty(FilesWith("496 0000"));
        Assert.Contains("Erased: #2, #3.", verify.Out, StringComparison.Ordinal);
        Assert.Contains("as asked by the former owner, by letter", verify.Out, StringComparison.Ordinal);
        Assert.Contains(
            json.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement),
            line => line.TryGetProperty("erasures", out var erasures) && erasures.GetArrayLength() == 1 && erasures[0].GetProperty("entries").GetArrayLength() == 2);
    }

    [Theory]
    [InlineData("Anna Lindqvist", 1, "nobody called \"Anna Lindqvist\"")]
    [InlineData("", 2, "--person needs a name")]
    public async Task Wrong_name_is_told(string name, int code, string problem)
    {
        var run = await CommandRun.OfAsync("erase", "--data", Data, "--person", name, "--yes");

        Assert.Equal(code, run.ExitCode);
        Assert.Contains(problem, run.Error, StringComparison.Ordinal);
        Assert.NotEmpty(FilesWith("Lindqvist"));
    }

    [Theory]
    [InlineData("--asked-by", Person, 1, "without naming the person")]
    [InlineData("--reason", "as " + Person + " wished", 1, "without naming the person")]
    [InlineData("--by", Person, 1, "somebody else do it")]
    [InlineData("--by", "!", 2, "--by: A name has at least one letter")]
    public async Task Person_is_not_named_in_the_tombstone(string option, string value, int code, string problem)
    {
        var run = await RunAsync("--yes", option, value);

        Assert.Equal(code, run.ExitCode);
        Assert.Contains(problem, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erased_twice_or_of_one_who_only_worked_here_or_in_no_folder_is_told()
    {
        await RunAsync("--yes");

        Assert.Contains("nobody called", (await RunAsync("--yes")).Error, StringComparison.Ordinal);
        var worker = await CommandRun.OfAsync("erase", "--data", Data, "--person", "Tess Okafor");
        Assert.Contains("Nothing goes", worker.Out, StringComparison.Ordinal);
        Assert.Equal(1, (await CommandRun.OfAsync("erase", "--data", Data, "--person", "Tess Okafor", "--yes")).ExitCode);
        Assert.Equal(0, (await CommandRun.OfAsync("erase", "--data", Data, "--person", "Tess Okafor", "--as-worker", "--yes")).ExitCode);
        Assert.Empty(FilesWith("Okafor"));
        Assert.Equal(0, (await CommandRun.OfAsync("verify", Data)).ExitCode);
        Assert.Contains("There is no folder", (await CommandRun.OfAsync("erase", "--data", Path.Combine(_folder.FullName, "none"), "--person", Person)).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Garage_that_is_open_is_not_erased_in()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);

        var run = await RunAsync("--yes");

        Assert.Equal(3, run.ExitCode);
        Assert.Contains("is open in another InspectLog", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_says_what_was_erased_and_holds_nothing_of_it()
    {
        await RunAsync("--yes");
        var to = Path.Combine(_folder.FullName, "out");
        var export = await CommandRun.OfAsync("export", "--data", Data, "--vehicle", "marigold", "--to", to);
        Assert.True(export.ExitCode == 0, export.Error);

        var verify = await CommandRun.OfAsync("verify", Directory.GetDirectories(to).Single());

        Assert.Equal(0, verify.ExitCode);
        Assert.Contains("Erased, as entry 4 says: what entry 2 says", verify.Out, StringComparison.Ordinal);
        Assert.Contains("it is said again without the person", verify.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.GetFiles(to, "*", SearchOption.AllDirectories), file => Encoding.Latin1.GetString(File.ReadAllBytes(file)).Contains("Lindqvist", StringComparison.OrdinalIgnoreCase));
    }

    private Task<CommandRun> RunAsync(params string[] further) => CommandRun.OfAsync(["erase", "--data", Data, "--person", Person, .. further]);

    private List<string> FilesWith(string text) =>
    [
        .. _folder.GetFiles("*", SearchOption.AllDirectories)
            .Where(file => Encoding.Latin1.GetString(File.ReadAllBytes(file.FullName)).Contains(text, StringComparison.OrdinalIgnoreCase))
            .Select(file => file.Name),
    ];
}
