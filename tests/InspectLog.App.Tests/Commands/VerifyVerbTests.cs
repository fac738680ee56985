using System.Text.Json;
using InspectLog.App.Tests.Bench;
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
        var bad = run.Lines.SkipLast(1).SelectMany(line => JsonDocument.Parse(line).RootElement.GetProperty("badFiles").EnumerateArray()).ToList();
        Assert.Equal("missing", Assert.Single(bad).GetProperty("condition").GetString());
    }

    [Fact]
    public async Task Folder_without_a_journal_is_refused()
    {
        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("There is no journal at", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_sheets_are_looked_at_and_one_that_is_missing_is_named()
    {
        var unknown = new string('c', 64);
        var journal = AddVehicle(Written.Started());
        Assert.Contains("Check sheets checked: 1.", (await CommandRun.OfAsync("verify", journal)).Out, StringComparison.Ordinal);

        AddVehicle(new InspectionStarted("trailer", 4, unknown, "Tess Okafor", null, null));
        var run = await CommandRun.OfAsync("verify", _folder.FullName);
        var json = await CommandRun.OfAsync("verify", _folder.FullName, "--json");

        Assert.Equal((1, 1), (run.ExitCode, json.ExitCode));
        Assert.Contains($"Entry 3 was made with a check sheet that is missing: trailer, version 4, {unknown}", run.Out, StringComparison.Ordinal);
        var bad = json.Lines.SkipLast(1).SelectMany(line => JsonDocument.Parse(line).RootElement.GetProperty("badSheets").EnumerateArray());
        Assert.Equal((3, unknown, "missing"), (Assert.Single(bad.Select(one => (
            one.GetProperty("sequence").GetInt32(), one.GetProperty("sha256").GetString(), one.GetProperty("condition").GetString())))));
    }

    [Fact]
    public async Task Missing_vehicle_is_told_in_a_line_of_its_own_and_the_others_get_their_results()
    {
        AddVehicle();
        AddVehicle();
        Directory.Delete(Path.Combine(_folder.FullName, "vehicles", "marigold"), recursive: true);

        var run = await CommandRun.OfAsync("verify", _folder.FullName);
        var json = await CommandRun.OfAsync("verify", _folder.FullName, "--json");

        Assert.Equal((1, 1), (run.ExitCode, json.ExitCode));
        Assert.Contains($"{_folder.FullName}: NOT WHOLE", run.Out, StringComparison.Ordinal);
        Assert.Contains("The journal of the vehicle \"marigold\" is missing or empty, and 2 entries are noted of it.", run.Out, StringComparison.Ordinal);
        Assert.Contains("marigold-2/journal.jsonl: intact", run.Out, StringComparison.Ordinal);
        var folder = JsonDocument.Parse(json.Lines[^1]).RootElement;
        Assert.Equal((false, 2), (folder.GetProperty("whole").GetBoolean(), folder.GetProperty("noted").GetInt32()));
        Assert.Equal("marigold", Assert.Single(folder.GetProperty("losses").EnumerateArray()).GetProperty("vehicle").GetString());
    }

    [Fact]
    public async Task Whole_folder_says_how_many_vehicles_are_noted()
    {
        AddVehicle();

        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal(0, run.ExitCode);
        Assert.Contains($"{_folder.FullName}: 1 vehicle is noted, and it is there", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Missing_folder_of_media_is_told()
    {
        AddVehicle();
        Directory.Delete(Path.Combine(_folder.FullName, "media"), recursive: true);

        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("The folder media is missing", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_that_is_none_is_refused()
    {
        var run = await CommandRun.OfAsync("verify", AddVehicle(), "--head", "5f1c");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("64 digits and letters", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Makes a garage of one vehicle with a picture, and gives the path of its journal.</summary>
    private string AddVehicle(params IReadOnlyList<EntryBody> further)
    {
        using var garage = Garage.Open(_folder.FullName, TimeProvider.System);
        var picture = garage.Media.Keep("picture"u8, "image/jpeg");
        var id = garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), [new VehiclePictured(picture), .. further]);
        return Path.Combine(_folder.FullName, "vehicles", id, "journal.jsonl");
    }
}
