using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>The script in an archive, run by a shell with sha256sum and openssl.</summary>
public sealed class SealBundleTests : IDisposable
{
    private readonly TempFolder _bag = new();
    private readonly SealKey _key = SealKey.Make();
    private readonly SignedSeal _seal;

    public SealBundleTests()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no POSIX shell.");
        using (var garage = Garage.Open(_bag.At("garage"), Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle(), new NoteWritten(0, null, "Says \"hash\":\"00\" and \\ too"), new PrivateFactsNoted("Ana", "", ""));
            Directory.CreateDirectory(_bag.At("data", "media"));
            File.Copy(_bag.At("garage", "vehicles", "marigold", "journal.jsonl"), _bag.At("data", "journal.jsonl"));
            File.WriteAllText(_bag.At("data", "media", "photo.jpg"), "a photo");
            var manifest = Manifest("data/journal.jsonl", "data/media/photo.jpg");
            var sealer = new Sealer(Some.Clock(), SomeSeals.Program);
            var chain = garage.Entries("marigold").ToList().Chain();
            var before = new KeptSeal("earlier") { Sound = SignedSeal.Sign(SomeSeals.Of(garage.Entries("marigold").Take(2).ToList().Chain()), _key) };
            _seal = sealer.SealArchive([before], "marigold", chain, Convert.ToHexStringLower(SHA256.HashData(manifest)), _key);
            foreach (var file in SealBundle.Of(_seal, [before]))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(_bag.At(file.Path))!);
                File.WriteAllBytes(_bag.At(file.Path), file.Bytes.ToArray());
            }
        }

        Directory.Delete(_bag.At("garage"), recursive: true);
    }

    public void Dispose()
    {
        _key.Dispose();
        _bag.Dispose();
    }

    [Fact]
    public void Whole_archive_is_intact_and_key_and_record_are_told_as_reports_print_them()
    {
        var (code, said) = Check();

        Assert.True(code == 0, said);
        Assert.Contains("Intact: 3 entries", said, StringComparison.Ordinal);
        Assert.Contains($"Record: {_seal.Seal.Record}", said, StringComparison.Ordinal);
        Assert.Contains($"Key: {KeyFingerprint.Printed(_key.Public)}", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Archive_is_checked_from_another_folder_too()
    {
        Assert.Equal(0, OtherTools.Run("/", "sh", _bag.At("verify.sh")).ExitCode);
    }

    [Theory]
    [InlineData("data/journal.jsonl")]
    [InlineData("data/media/photo.jpg")]
    [InlineData("manifest-sha256.txt")]
    [InlineData("seal/payload.json")]
    [InlineData("seal/signed.txt")]
    [InlineData("seal/signature.der")]
    [InlineData("seal/key.pem")]
    public void File_that_was_changed_or_is_missing_is_found(string file)
    {
        var bytes = File.ReadAllBytes(_bag.At(file));
        foreach (var at in new[] { 0, bytes.Length / 2, bytes.Length - 2 })
        {
            var changed = bytes.ToArray();
            changed[at] ^= 4;
            File.WriteAllBytes(_bag.At(file), changed);
            Assert.StartsWith("NOT INTACT", Said(), StringComparison.Ordinal);
        }

        File.Delete(_bag.At(file));
        Assert.Contains("NOT INTACT", Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void File_that_nothing_names_is_found()
    {
        File.WriteAllText(_bag.At("data", "more.txt"), "more");

        Assert.Contains("does not name", Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void Changed_journal_with_a_manifest_to_match_is_found()
    {
        File.WriteAllLines(_bag.At("data", "journal.jsonl"), File.ReadAllLines(_bag.At("data", "journal.jsonl"))[..2]);
        Manifest("data/journal.jsonl", "data/media/photo.jpg");

        Assert.Contains("not the one that was sealed", Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void Forger_with_a_key_of_their_own_is_told_by_the_key_alone()
    {
        using var forger = SealKey.Make();
        var forged = SignedSeal.Sign(_seal.Seal, forger);
        foreach (var file in SealBundle.Of(forged, []))
        {
            File.WriteAllBytes(_bag.At(file.Path), file.Bytes.ToArray());
        }

        var (code, said) = Check();

        Assert.Equal(0, code);
        Assert.DoesNotContain(KeyFingerprint.Printed(_key.Public), said, StringComparison.Ordinal);
        Assert.Contains("Anybody can make a key", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Fingerprint_is_the_one_that_openssl_and_sha256sum_give()
    {
        Assert.StartsWith(
            _key.Public.Fingerprint, OtherTools.Do(_bag.Path, "sh", "-c", "openssl pkey -pubin -in seal/key.pem -outform DER | sha256sum"), StringComparison.Ordinal);
    }

    [Fact]
    public void Seal_and_the_seals_of_before_are_among_the_files()
    {
        Assert.Equal(_seal.Compact, SignedSeal.Read(File.ReadAllText(_bag.At("seal", "seal.jws"))).Compact);
        Assert.Equal(2, SignedSeal.Read(File.ReadAllText(Assert.Single(Directory.GetFiles(_bag.At("seal", "earlier"))))).Seal.Count);
        Assert.Equal(new EarlierSeal(2, _seal.Seal.Earlier!.Head), _seal.Seal.Earlier);
    }

    [Fact]
    public void Seal_of_an_archive_is_held_against_its_journal_and_its_manifest()
    {
        var seal = KeptSeal.Of("seal.jws", _seal.Compact, null);
        var chain = JournalChain.Of(Journal.Record.JournalScan.Of(File.ReadAllBytes(_bag.At("data", "journal.jsonl"))).Entries);
        var manifest = _seal.Seal.Manifest!;
        using var other = SealKey.Make();

        Assert.Empty(SealBundle.Faults(seal, [], chain, manifest, _key.Public.Fingerprint));
        Assert.Contains("manifest was made anew", Assert.Single(SealBundle.Faults(seal, [], chain, new string('0', 64), null)), StringComparison.Ordinal);
        Assert.Contains("No seal here", Assert.Single(SealBundle.Faults(seal, [], chain, manifest, other.Public.Fingerprint)), StringComparison.Ordinal);
        Assert.Contains("is no seal", Assert.Single(SealBundle.Faults(KeptSeal.Of("seal.jws", "", null), [], chain, manifest, null)), StringComparison.Ordinal);
    }

    private byte[] Manifest(params string[] files)
    {
        var lines = files.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(_bag.At(file))))}  {file}\n");
        var manifest = Encoding.UTF8.GetBytes(string.Concat(lines));
        File.WriteAllBytes(_bag.At("manifest-sha256.txt"), manifest);
        return manifest;
    }

    private (int ExitCode, string Said) Check() => OtherTools.Run(_bag.Path, "sh", "verify.sh");

    private string Said()
    {
        var (code, said) = Check();
        Assert.True(code == 1, $"It ended with {code}: {said}");
        return said[said.IndexOf("NOT INTACT", StringComparison.Ordinal)..];
    }
}
