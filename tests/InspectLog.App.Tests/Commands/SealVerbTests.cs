using System.Text.Json;
using InspectLog.App.Commands;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Tests.Commands;

/// <summary>Sealing, and verifying with seals, from the command line.</summary>
public sealed class SealVerbTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public SealVerbTests()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);
        garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new NoteWritten(0, null, "One"), new NoteWritten(0, null, "Two"));
        garage.AddVehicle("Tess Okafor", new VehicleAdded("Teasel", "", null), new NoteWritten(0, null, "One"), new NoteWritten(0, null, "Two"));
    }

    private string Data => At("garage");

    private string Journal => At("garage", "vehicles", "marigold", "journal.jsonl");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Sealed_vehicle_is_intact_and_verify_says_what_a_seal_proves_and_what_not()
    {
        var seal = await SealAsync();
        Assert.Contains("Sealed: marigold, 3 entries", seal.Out, StringComparison.Ordinal);
        Assert.Contains("seal-key sheet", seal.Error, StringComparison.Ordinal);

        var run = await CommandRun.OfAsync("verify", Data);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains($"3 entries, key {Word(seal, "Key")}", run.Out, StringComparison.Ordinal);
        Assert.Contains("It does not prove who made it", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Key_of_the_printed_page_is_asked_for_with_key()
    {
        var seal = await SealAsync();
        Directory.Delete(At("garage", "keys"), recursive: true); // a machine that never saw the key
        var vehicle = At("garage", "vehicles", "marigold");

        Assert.Equal(0, (await CommandRun.OfAsync("verify", vehicle, "--key", Word(seal, "Key"))).ExitCode);
        var other = await CommandRun.OfAsync("verify", vehicle, "--key", new string('0', 32));
        Assert.Equal(1, other.ExitCode);
        Assert.Contains("No seal here was made with the key 0000 0000", other.Out, StringComparison.Ordinal);
        Assert.Equal(1, (await CommandRun.OfAsync("verify", Data, "--key", Word(seal, "Key"))).ExitCode); // teasel has no seal
        Assert.Equal(2, (await CommandRun.OfAsync("verify", Data, "--key", "12")).ExitCode);
    }

    /// <summary>The three ways of a forger who leaves no trace in the folder: the seals in it are gone too, and one kept
    /// elsewhere, or one printed page, finds each.</summary>
    [Theory]
    [InlineData("cut", "was cut")]
    [InlineData("rewritten", "another journal")]
    [InlineData("replaced", "another journal")]
    public async Task Forged_journal_is_found_by_the_last_seal_and_by_the_printed_page(string how, string said)
    {
        await SealAsync("--copy", At("kept.jws"));
        var page = PrintedSeal.Of(SignedSeal.Read(await File.ReadAllTextAsync(At("kept.jws"), TestContext.Current.CancellationToken))).Text;
        Assert.Equal(0, (await CommandRun.OfAsync("verify", Data, "--seal", At("kept.jws"), "--page", page)).ExitCode);

        Forge(how);

        Assert.Equal(0, (await CommandRun.OfAsync("verify", At("garage", "vehicles", "marigold"))).ExitCode); // by itself it is sound
        var bySeal = await CommandRun.OfAsync("verify", Data, "--seal", At("kept.jws"));
        var byPage = await CommandRun.OfAsync("verify", Data, "--page", page);
        Assert.Equal((1, 1), (bySeal.ExitCode, byPage.ExitCode));
        Assert.Contains(said, bySeal.Out, StringComparison.Ordinal);
        Assert.Contains("The page: NOT KEPT", byPage.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Forged_journal_is_found_by_the_seal_beside_it_and_in_json()
    {
        await SealAsync();
        Forge("cut", leavesSeals: true);

        var run = await CommandRun.OfAsync("verify", Data);
        var json = await CommandRun.OfAsync("verify", At("garage", "vehicles", "marigold"), "--json");

        Assert.Equal((1, 1), (run.ExitCode, json.ExitCode));
        Assert.Contains("NOT INTACT", run.Out, StringComparison.Ordinal);
        Assert.Contains("SEAL: The journal was cut", run.Out, StringComparison.Ordinal);
        var seal = Assert.Single(JsonDocument.Parse(Assert.Single(json.Lines)).RootElement.GetProperty("seals").EnumerateArray());
        Assert.Equal(("cut", 3), (seal.GetProperty("standing").GetString(), seal.GetProperty("entries").GetInt32()));
    }

    [Fact]
    public async Task Journal_that_was_cut_is_not_sealed_again()
    {
        await SealAsync();
        Forge("cut", leavesSeals: true);

        var run = await CommandRun.OfAsync("seal", "--data", Data, "--vehicle", "marigold");

        Assert.Equal((1, ""), (run.ExitCode, run.Out));
        Assert.Contains("Not sealed. The journal was cut", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Key_under_a_passphrase_seals_with_it_alone()
    {
        await File.WriteAllTextAsync(At("secret"), "seven spanners\n", TestContext.Current.CancellationToken);
        await SealAsync("--passphrase-file", At("secret"));

        var without = await CommandRun.OfAsync("seal", "--data", Data, "--vehicle", "teasel");
        Assert.Equal(2, without.ExitCode);
        Assert.Contains("--passphrase-file", without.Error, StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.OfAsync("seal", "--data", Data, "--vehicle", "teasel", "--passphrase-file", At("secret"))).ExitCode);

        Assert.Equal(0, (await CommandRun.OfAsync("seal-key", "protect", "--data", Data, "--passphrase-file", At("secret"))).ExitCode);
        Assert.Equal(0, (await CommandRun.OfAsync("seal-key", "show", "--data", Data)).ExitCode);
    }

    [Fact]
    public async Task Key_is_restored_from_its_printed_sheet_on_another_computer()
    {
        var key = Word(await SealAsync(), "Key");
        var sheet = await CommandRun.OfAsync("seal-key", "sheet", "--data", Data);
        var digits = string.Join('\n', sheet.Lines.Where(line => line.Contains(")  ", StringComparison.Ordinal)).Select(line => line.Split(")  ")[1]));
        Directory.CreateDirectory(At("other"));

        var wrong = await CommandRun.WithAsync(new Web.ScriptedSpeech(), digits.Replace(digits[0], digits[0] == '1' ? '2' : '1'), "seal-key", "restore", "--data", At("other"));
        Assert.Equal(2, wrong.ExitCode);
        Assert.StartsWith("Line ", wrong.Error, StringComparison.Ordinal);
        var restored = await CommandRun.WithAsync(new Web.ScriptedSpeech(), digits, "seal-key", "restore", "--data", At("other"));

        Assert.Equal((0, key), (restored.ExitCode, Word(restored, "Key")));
        Assert.Equal(3, (await CommandRun.WithAsync(new Web.ScriptedSpeech(), digits, "seal-key", "restore", "--data", Data)).ExitCode);
    }

    [Theory]
    [InlineData("seal", "--vehicle", "nothing")]
    [InlineData("seal", "--vehicle", "../garage")]
    [InlineData("seal", "--vehicle", "marigold", "--stamp", "nothing.tsr")]
    [InlineData("seal-key", "show")]
    [InlineData("seal-key", "sheet")]
    [InlineData("seal-key", "dance")]
    public async Task What_cannot_be_done_is_said(params string[] arguments)
    {
        var run = await CommandRun.OfAsync([.. arguments, "--data", Data]);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.NotEmpty(run.Error);
    }

    [Fact]
    public async Task File_that_is_no_seal_or_no_page_is_refused()
    {
        await File.WriteAllTextAsync(At("kept.jws"), "no seal", TestContext.Current.CancellationToken);

        Assert.Equal(2, (await CommandRun.OfAsync("verify", Data, "--seal", At("kept.jws"))).ExitCode);
        Assert.Equal(2, (await CommandRun.OfAsync("verify", Data, "--seal", At("nothing.jws"))).ExitCode);
        Assert.Equal(2, (await CommandRun.OfAsync("verify", Data, "--page", "INSPECTLOG")).ExitCode);
    }

    private string At(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);

    private Task<CommandRun> SealAsync(params string[] further) =>
        CommandRun.OfAsync(["seal", "--data", Data, "--vehicle", "marigold", .. further]);

    private static string Word(CommandRun run, string name) =>
        run.Lines.Single(line => line.StartsWith($"{name}: ", StringComparison.Ordinal))[(name.Length + 2)..].Split(',')[0];

    private void Forge(string how, bool leavesSeals = false)
    {
        var seals = At("garage", "vehicles", "marigold", "seals");
        if (!leavesSeals)
            Directory.Delete(seals, recursive: true);
        switch (how)
        {
            case "cut":
                File.WriteAllText(Journal, string.Join('\n', File.ReadAllLines(Journal)[..2]) + "\n");
                break;
            case "rewritten":
                using (var garage = Garage.Open(At("forged"), TimeProvider.System))
                    garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new NoteWritten(0, null, "One"), new NoteWritten(0, null, "Never"));
                File.Copy(At("forged", "vehicles", "marigold", "journal.jsonl"), Journal, overwrite: true);
                break;
            default:
                File.Copy(At("garage", "vehicles", "teasel", "journal.jsonl"), Journal, overwrite: true);
                break;
        }
    }
}
