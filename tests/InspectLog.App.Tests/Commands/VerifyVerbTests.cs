using System.Text.Json;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Commands;

public sealed class VerifyVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Sound_journal_is_intact()
    {
        var journal = AddVehicle();

        var run = await CommandRun.OfAsync("verify", journal, "--json");

        var json = JsonDocument.Parse(Assert.Single(run.Lines)).RootElement;
        Assert.Equal(journal, json.GetProperty("journal").GetString());
        Assert.True(json.GetProperty("intact").GetBoolean());
        Assert.Equal(2, json.GetProperty("entries").GetInt32());
        Assert.Equal(64, json.GetProperty("lastHash").GetString()!.Length);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("broken").ValueKind);
        Assert.Equal(1, json.GetProperty("filesChecked").GetInt32());
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task One_changed_letter_is_found_and_its_line_named()
    {
        var journal = AddVehicle();
        var text = await File.ReadAllTextAsync(journal, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(journal, text.Replace("Marigold", "Marigolt", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains($"{journal}: NOT INTACT", run.Out, StringComparison.Ordinal);
        Assert.Contains("Line 1:", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Missing_recording_is_found()
    {
        AddVehicle();
        Directory.Delete(Path.Combine(_folder.FullName, "media"), recursive: true);
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "media"));

        var run = await CommandRun.OfAsync("verify", _folder.FullName, "--json");

        Assert.Equal(1, run.ExitCode);
        var bad = run.Lines.SelectMany(line => JsonDocument.Parse(line).RootElement.GetProperty("badFiles").EnumerateArray()).ToList();
        Assert.Equal("missing", Assert.Single(bad).GetProperty("condition").GetString());
    }

    [Fact]
    public async Task Folder_without_a_journal_is_refused()
    {
        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("There is no journal at", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Makes a garage of one vehicle with a picture, and gives the path of its journal.</summary>
    private string AddVehicle()
    {
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);
        var picture = garage.Media.Keep("picture"u8, "image/jpeg");
        var id = garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new VehiclePictured(picture));
        return Path.Combine(_folder.FullName, "vehicles", id, "journal.jsonl");
    }
}
