using System.Text.Json;
using InspectLog.App.Tests.Commands;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Tests.Archiving;

/// <summary>Archives exported with a seal, and held by <c>verify</c> against what somebody kept.</summary>
public sealed class SealedVerbsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public SealedVerbsTests()
    {
        using var garage = Garage.Open(Data, TimeProvider.System);
        garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new NoteWritten(0, null, "One"), new PrivateFactsNoted("Ana", "", ""));
        garage.AddVehicle("Tess Okafor", new VehicleAdded("Teasel", "", null), new NoteWritten(0, null, "One"), new NoteWritten(0, null, "Two"));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Data => At("garage");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Sealed_archive_verifies_on_a_computer_that_never_saw_the_key_and_says_what_that_proves()
    {
        await SealAsync();
        var export = await ExportAsync("--profile", "buyer", "--zip");
        Directory.Delete(Data, recursive: true);

        var run = await CommandRun.OfAsync("verify", export.Out.TrimEnd());
        var json = await CommandRun.OfAsync("verify", export.Out.TrimEnd(), "--json");

        Assert.StartsWith("Sealed with the key ", export.Error, StringComparison.Ordinal);
        Assert.Equal((0, 0, ""), (run.ExitCode, json.ExitCode, run.Error));
        Assert.Contains("Sealed as an archive on", run.Out, StringComparison.Ordinal);
        Assert.Contains("It does not prove who made it", run.Out, StringComparison.Ordinal);
        Assert.Contains("The seal of an archive is of its manifest too", run.Out, StringComparison.Ordinal);
        var said = JsonDocument.Parse(Assert.Single(json.Lines)).RootElement;
        Assert.Equal((true, true, 2), (said.GetProperty("intact").GetBoolean(), said.GetProperty("sealed").GetBoolean(), said.GetProperty("seals").GetArrayLength()));
    }

    [Fact]
    public async Task Archive_without_a_key_says_so_and_is_no_error()
    {
        var export = await ExportAsync();
        var run = await CommandRun.OfAsync("verify", export.Out.TrimEnd());
        var import = await CommandRun.OfAsync("import", export.Out.TrimEnd(), "--data", At("other"));

        Assert.Equal((0, "Not sealed.\n", 0, 0), (export.ExitCode, export.Error, run.ExitCode, import.ExitCode));
        Assert.Contains("  Not sealed: by itself this archive does not show", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("A seal proves", run.Out, StringComparison.Ordinal);
        Assert.Contains("Not sealed: ", import.Out, StringComparison.Ordinal);
    }

    /// <summary>Whoever forges an archive throws its seal away and makes all manifests anew; what was kept elsewhere finds it.
    /// </summary>
    [Theory]
    [InlineData("cut", "was cut")]
    [InlineData("rewritten", "another journal")]
    [InlineData("replaced", "another journal")]
    public async Task Forged_archive_is_found_by_the_last_seal_and_by_the_printed_page_and_head(string how, string said)
    {
        await SealAsync("--copy", At("kept.jws"));
        var kept = SignedSeal.Read(await File.ReadAllTextAsync(At("kept.jws"), Stop));
        var page = PrintedSeal.Of(kept).Text;
        var archive = (await ExportAsync()).Out.TrimEnd();
        Assert.Equal(0, (await CommandRun.OfAsync("verify", archive, "--seal", At("kept.jws"), "--page", page, "--head", kept.Seal.Record)).ExitCode);

        Directory.Delete(Path.Combine(archive, "seal"), recursive: true);
        ForgedBag.Forge(archive, how, Other(how));

        Assert.Equal(0, (await CommandRun.OfAsync("verify", archive)).ExitCode); // by itself it is sound
        var bySeal = await CommandRun.OfAsync("verify", archive, "--seal", At("kept.jws"));
        var byPage = await CommandRun.OfAsync("verify", archive, "--page", page);
        var byHead = await CommandRun.OfAsync("verify", archive, "--head", kept.Seal.Record);
        Assert.Equal((1, 1, 1), (bySeal.ExitCode, byPage.ExitCode, byHead.ExitCode));
        Assert.Contains(said, bySeal.Out, StringComparison.Ordinal);
        Assert.Contains("The page: NOT KEPT", byPage.Out, StringComparison.Ordinal);
        Assert.Contains("NO MATCH", byHead.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cut", "The journal was cut")]
    [InlineData("rewritten", "another journal")]
    [InlineData("replaced", "another journal")]
    public async Task Forged_archive_is_found_by_the_seal_in_it_and_not_taken_in(string how, string said)
    {
        await SealAsync();
        var archive = (await ExportAsync()).Out.TrimEnd();
        ForgedBag.Forge(archive, how, Other(how));

        var verify = await CommandRun.OfAsync("verify", archive);
        var import = await CommandRun.OfAsync("import", archive, "--data", At("other"));

        Assert.Equal((1, 1), (verify.ExitCode, import.ExitCode));
        Assert.All([verify.Out, import.Out], text => Assert.Contains("  SEAL: ", text, StringComparison.Ordinal));
        Assert.All([verify.Out, import.Out], text => Assert.Contains(said, text, StringComparison.Ordinal));
        Assert.False(Directory.Exists(At("other")));
    }

    [Fact]
    public async Task Key_that_is_trusted_is_asked_for_with_key()
    {
        var key = (await SealAsync()).Lines.Single(line => line.StartsWith("Key: ", StringComparison.Ordinal))[5..];
        var archive = (await ExportAsync()).Out.TrimEnd();

        var own = await CommandRun.OfAsync("verify", archive, "--key", key);
        var other = await CommandRun.OfAsync("verify", archive, "--key", new string('0', 32));

        Assert.Equal((0, 1), (own.ExitCode, other.ExitCode));
        Assert.Contains("No seal here was made with the key 0000 0000", other.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Key_under_a_passphrase_is_asked_for_and_the_archive_can_be_left_unsealed()
    {
        await File.WriteAllTextAsync(At("secret"), "seven spanners\n", Stop);
        await SealAsync("--passphrase-file", At("secret"));

        var without = await ExportAsync();
        var with = await ExportAsync("--passphrase-file", At("secret"));
        var unsealed = await ExportAsync("--unsealed");

        Assert.Equal((2, 0, 0), (without.ExitCode, with.ExitCode, unsealed.ExitCode));
        Assert.Contains("--passphrase-file FILE, or --unsealed", without.Error, StringComparison.Ordinal);
        Assert.Contains("The archive itself is not sealed", (await CommandRun.OfAsync("verify", unsealed.Out.TrimEnd())).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_whose_journal_cannot_be_read_is_held_against_nothing()
    {
        await SealAsync("--copy", At("kept.jws"));
        var archive = (await ExportAsync()).Out.TrimEnd();
        File.Delete(Path.Combine(archive, "data", "journal.jsonl"));

        var run = await CommandRun.OfAsync("verify", archive, "--seal", At("kept.jws"));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("There is no journal here that can be read", run.Out, StringComparison.Ordinal);
    }

    private string At(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);

    private Task<CommandRun> SealAsync(params string[] further) =>
        CommandRun.OfAsync(["seal", "--data", Data, "--vehicle", "marigold", .. further]);

    private Task<CommandRun> ExportAsync(params string[] further) =>
        CommandRun.OfAsync(["export", "--data", Data, "--vehicle", "marigold", "--to", At("archives"), .. further]);

    /// <summary>A journal to be put in the place of the genuine one.</summary>
    private string Other(string how)
    {
        if (how == "rewritten")
        {
            using var garage = Garage.Open(At("forged"), TimeProvider.System);
            garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "", null), new NoteWritten(0, null, "Never"), new PrivateFactsNoted("Ana", "", ""));
            return At("forged", "vehicles", "marigold", "journal.jsonl");
        }

        return At("garage", "vehicles", "teasel", "journal.jsonl");
    }
}
