using InspectLog.Archives.Importing;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Sealing;

/// <summary>Archives with their seal: checked by the program without the key, and by the script in them.</summary>
public sealed class SealedArchiveTests : IDisposable
{
    private readonly TempFolder _garage = new();
    private readonly TempFolder _out = new();
    private readonly SealKey _key = SealKey.Make();
    private readonly string _vehicle;

    public SealedArchiveTests() => _vehicle = SomeGarage.Make(_garage.Path);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _key.Dispose();
        _garage.Dispose();
        _out.Dispose();
    }

    [Theory]
    [InlineData("everything", false)]
    [InlineData("buyer", true)]
    public async Task Sealed_archive_is_intact_as_folder_and_as_zip_and_names_its_key(string profile, bool withholds)
    {
        SealJournal();
        SomeGarage.Note(_garage.Path, _vehicle, "One more");
        foreach (var archive in new[] { await FolderAsync(profile), await ZipAsync(profile) })
        {
            var found = SomeArchive.Checked(archive);

            Assert.Empty(found.Faults);
            Assert.True(found.IsIntact);
            var seals = found.Facts!.Seals;
            Assert.Equal(_key.Public.Fingerprint, seals.Own!.Sound!.Key.Fingerprint);
            Assert.Equal(found.Facts.Entries.Count, seals.Own.Sound.Seal.Count);
            Assert.Equal(withholds, seals.Own.Sound.Seal.Withheld.Count > 0);
            Assert.Equal(found.Facts.Entries.Count - 1, Assert.Single(seals.Earlier).Sound!.Seal.Count);
            Assert.Empty(seals.Faults(_key.Public.Fingerprint));
            Assert.Empty(seals.Told());
        }
    }

    [Theory]
    [InlineData("everything")]
    [InlineData("buyer")]
    public async Task Script_in_an_exported_bag_checks_it_with_sha256sum_and_openssl_alone(string profile)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no POSIX shell.");
        SealJournal();
        var archive = await FolderAsync(profile);

        var whole = await Outside.RunAsync("sh", archive, "verify.sh");
        await File.AppendAllTextAsync(Path.Combine(archive, "data", "readings.csv"), "x", Stop);
        var spoilt = await Outside.RunAsync("sh", archive, "verify.sh");

        Assert.Equal(0, whole.ExitCode);
        Assert.Contains($"Key: {KeyFingerprint.Printed(_key.Public)}", whole.Out, StringComparison.Ordinal);
        Assert.Equal(1, spoilt.ExitCode);
        Assert.Contains("NOT INTACT", spoilt.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_without_a_key_says_that_it_is_not_sealed_and_is_intact()
    {
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop);

        var found = SomeArchive.Checked(archive);

        Assert.True(found.IsIntact);
        Assert.StartsWith("Not sealed", Assert.Single(found.Facts!.Seals.Told()), StringComparison.Ordinal);
        Assert.Contains("No seal here was made with the key", Assert.Single(found.Facts.Seals.Faults(_key.Public.Fingerprint)), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            var script = await Outside.RunAsync("sh", archive, "verify.sh");
            Assert.Equal(0, script.ExitCode);
            Assert.Contains("NOT SEALED", script.Out, StringComparison.Ordinal);
            Assert.Contains(found.Facts.Head, script.Out, StringComparison.Ordinal);
            File.Delete(Path.Combine(archive, "data", "readings.csv"));
            Assert.Equal(1, (await Outside.RunAsync("sh", archive, "verify.sh")).ExitCode);
        }
    }

    [Fact]
    public async Task Buyers_archive_with_the_journals_seals_alone_is_intact_and_says_what_was_withheld_since()
    {
        SealJournal();
        var archive = await SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, ArchiveProfiles.Buyer, Stop);

        var found = SomeArchive.Checked(archive);

        Assert.True(found.IsIntact);
        Assert.Contains(found.Facts!.Seals.Told(), said => said.StartsWith("The archive itself is not sealed", StringComparison.Ordinal));
        Assert.Contains(found.Facts.Seals.Told(), said => said.StartsWith("Withheld since the newest seal", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cut", "was cut")]
    [InlineData("rewritten", "another journal")]
    [InlineData("replaced", "another journal")]
    public async Task Forged_journal_with_manifests_made_anew_is_found_by_the_seal_in_the_archive(string how, string said)
    {
        var archive = await FolderAsync("everything");
        using var other = new TempFolder();
        SomeGarage.Make(other.Path, notes: how == "rewritten" ? 0 : 3);

        ForgedBag.Forge(archive, how, other.At("vehicles", _vehicle, "journal.jsonl"));

        var found = SomeArchive.Checked(archive);
        Assert.False(found.IsIntact);
        Assert.Contains(found.Facts!.Seals.Faults(), fault => fault.Contains(said, StringComparison.Ordinal));
        Assert.Contains(found.Facts.Seals.Faults(), fault => fault.Contains("manifest was made anew", StringComparison.Ordinal));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(1, (await Outside.RunAsync("sh", archive, "verify.sh")).ExitCode);
        }
    }

    [Fact]
    public async Task Changed_report_with_manifests_made_anew_is_found_by_the_seal_alone()
    {
        var archive = await FolderAsync("everything");
        await File.WriteAllTextAsync(Path.Combine(archive, "data", "readings.csv"), "inspection,value\r\n1,better\r\n", Stop);
        ForgedBag.MakeAnew(archive);

        var found = SomeArchive.Checked(archive);

        Assert.Empty(found.Faults);
        Assert.False(found.IsIntact);
        Assert.Contains("manifest was made anew", Assert.Single(found.Facts!.Seals.Faults()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("seal/seal.jws", "is no seal")]
    [InlineData("seal/payload.json", "does not say what the seal")]
    [InlineData("seal/key.pem", "does not say what the seal")]
    public async Task Piece_of_the_seal_that_is_missing_is_found_though_no_manifest_names_it(string piece, string said)
    {
        var archive = await FolderAsync("everything");
        File.Delete(Path.Combine(archive, piece));
        ForgedBag.MakeAnew(archive);

        var found = SomeArchive.Checked(archive);

        Assert.False(found.IsIntact);
        Assert.Contains(said, Assert.Single(found.Facts!.Seals.Faults()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_that_somebody_else_sealed_after_a_genuine_seal_is_told_when_the_key_is_given()
    {
        SealJournal();
        using var forger = SealKey.Make();
        var archive = await SomeArchive.SealedAsync(_garage.Path, _vehicle, null, (name, _) => new FolderTarget(_out.Path, name), forger, Stop);

        var seals = SomeArchive.Checked(archive).Facts!.Seals;

        Assert.Empty(seals.Faults());
        Assert.Contains("was sealed with another", Assert.Single(seals.Faults(_key.Public.Fingerprint)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_that_is_not_what_was_sealed_makes_no_archive()
    {
        SealJournal();
        var journal = _garage.At("vehicles", _vehicle, "journal.jsonl");
        await File.WriteAllTextAsync(journal, string.Join('\n', (await File.ReadAllLinesAsync(journal, Stop))[..^1]) + "\n", Stop);

        var refused = await Assert.ThrowsAsync<ArchiveRefusedException>(() => FolderAsync("everything"));
        var unsealed = await Assert.ThrowsAsync<ArchiveRefusedException>(() => SomeArchive.FolderAsync(_garage.Path, _vehicle, _out.Path, stop: Stop));

        Assert.All([refused.Message, unsealed.Message], message => Assert.StartsWith("The journal was cut", message, StringComparison.Ordinal));
        Assert.Empty(Directory.GetFileSystemEntries(_out.Path));
    }

    [Theory]
    [InlineData("everything")]
    [InlineData("buyer")]
    public async Task Seals_come_in_with_the_archive_and_the_garage_verifies_with_them(string profile)
    {
        SealJournal();
        using var here = new TempFolder();
        using (var garage = SomeGarage.Open(here.Path))
        using (var tree = SomeArchive.Open(await ZipAsync(profile)))
        {
            new ArchiveImport(garage, _ => long.MaxValue).Run(tree, SomeArchive.Check.Check(tree, stop: Stop).Facts!, Stop);
        }

        var report = JournalVerifier.Verify(here.Path, _ => true);

        Assert.True(report.IsIntact);
        Assert.Equal(2, report.Journals.Single(one => one.Seals.VehicleId is not null).Seals.Seals.Count);
    }

    private void SealJournal() => new Sealer(SomeGarage.Clock, "InspectLog").Seal(
        SealFolder.Of(_garage.Path, _vehicle), _vehicle, JournalChain.Read(_garage.Path, _vehicle), _key);

    private Task<string> FolderAsync(string profile) =>
        SomeArchive.SealedAsync(_garage.Path, _vehicle, ArchiveProfiles.Find(profile), (name, _) => new FolderTarget(_out.Path, name), _key, Stop);

    private Task<string> ZipAsync(string profile) =>
        SomeArchive.SealedAsync(_garage.Path, _vehicle, ArchiveProfiles.Find(profile), (name, day) => new ZipTarget(_out.Path, name, day), _key, Stop);
}
