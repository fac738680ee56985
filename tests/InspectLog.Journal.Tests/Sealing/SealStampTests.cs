using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>Time stamps as <c>openssl ts</c> makes them (RFC 3161), with an authority made for the test.</summary>
public sealed class SealStampTests : IDisposable
{
    private const string Config =
        """
        [tsa]
        serial = serial
        crypto_device = builtin
        signer_digest = sha256
        default_policy = 1.2.3.4.1
        digests = sha1, sha256, sha384, sha512
        accuracy = secs:1
        ess_cert_id_alg = sha256
        [req]
        distinguished_name = name
        [name]
        [stamping]
        extendedKeyUsage = critical,timeStamping
        """;

    private readonly TempFolder _folder = new();
    private readonly SealKey _key = SealKey.Make();
    private readonly SignedSeal _seal;

    public SealStampTests()
    {
        _seal = SignedSeal.Sign(SomeSeals.Of(SomeSeals.Journal(3).Chain()), _key);
        File.WriteAllText(_folder.At("seal.jws"), _seal.Compact);
        File.WriteAllText(_folder.At("tsa.cnf"), Config);
        File.WriteAllText(_folder.At("serial"), "01");
        OpenSsl("req", "-x509", "-newkey", "rsa:2048", "-nodes", "-keyout", "tsa.key", "-out", "tsa.pem", "-days", "30",
            "-subj", "/O=Invented stampers/CN=Stamp one", "-config", "tsa.cnf", "-extensions", "stamping");
    }

    public void Dispose()
    {
        _key.Dispose();
        _folder.Dispose();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Stamp_of_a_seal_holds_as_answer_and_as_token(bool isToken)
    {
        var before = TimeProvider.System.GetUtcNow().AddMinutes(-1);

        var stamp = SealStamp.Read(Stamped(isToken: isToken), _seal);

        Assert.InRange(stamp.Time, before, TimeProvider.System.GetUtcNow().AddMinutes(1));
        Assert.Contains("Stamp one", stamp.Signer, StringComparison.Ordinal);
        Assert.Contains("Invented stampers", stamp.Issuer, StringComparison.Ordinal);
        Assert.Equal(64, stamp.Certificate.Length);
    }

    [Fact]
    public void Kept_stamp_is_read_again_with_its_seal_and_openssl_still_takes_it()
    {
        var seals = new SealFolder(_folder.At("vehicle"), new Journal.Storage.Durable());
        seals.Keep(_seal);
        seals.Attach(_seal.FileName, SealStamp.Read(Stamped(isToken: false), _seal));

        var kept = Assert.Single(seals.Read());
        Assert.Equal((null, null), (kept.Problem, kept.StampProblem));
        Assert.NotNull(kept.Stamp);
        var token = Assert.Single(Directory.GetFiles(_folder.At("vehicle", "seals"), "*.tst"));
        OpenSsl("ts", "-verify", "-data", "seal.jws", "-in", token, "-token_in", "-CAfile", "tsa.pem");
    }

    [Fact]
    public void Stamp_of_another_seal_is_refused()
    {
        var other = SignedSeal.Sign(_seal.Seal with { Program = "InspectLog 1.1" }, _key);

        Assert.Contains("of something else", Refusal(Stamped(isToken: true), other), StringComparison.Ordinal);
    }

    [Fact]
    public void Changed_stamp_is_refused_wherever_it_was_changed()
    {
        var stamp = Stamped(isToken: true);
        for (var at = 0; at < stamp.Length; at += 7)
        {
            var changed = stamp.ToArray();
            changed[at] ^= 1;
            Assert.False(IsTakenAsOtherTime(changed), $"byte {at}");
        }
    }

    [Fact]
    public void Stamp_without_a_certificate_or_of_an_old_hash_or_not_at_all_is_refused()
    {
        Assert.Contains("brings no certificate", Refusal(Stamped(isToken: true, query: [])), StringComparison.Ordinal);
        Assert.Contains("can be forged", Refusal(Stamped(isToken: true, hash: "-sha1")), StringComparison.Ordinal);
        Assert.Contains("no time stamp", Refusal([]), StringComparison.Ordinal);
        Assert.Contains("no time stamp", Refusal("no stamp"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains("no time stamp", Refusal([.. Stamped(isToken: true), 0]), StringComparison.Ordinal);
        Assert.Contains("refused", Refusal([0x30, 0x05, 0x30, 0x03, 0x02, 0x01, 0x02]), StringComparison.Ordinal);
    }

    [Fact]
    public void Stamp_that_does_not_hold_is_told_with_the_seal()
    {
        var kept = KeptSeal.Of(_seal.FileName, _seal.Compact, [1, 2, 3]);
        var report = SealsReport.Of([kept], SomeSeals.Journal(3).Chain(), null);

        Assert.NotNull(kept.Sound);
        Assert.Contains(SealWords.Faults(report, null), fault => fault.Contains("time stamp", StringComparison.Ordinal));
    }

    /// <summary>Some bytes of a token are signed by nobody: those may change, but never what is told.</summary>
    private bool IsTakenAsOtherTime(byte[] changed)
    {
        try
        {
            return SealStamp.Read(changed, _seal).Time != SealStamp.Read(Stamped(isToken: true), _seal).Time;
        }
        catch (FormatException)
        {
            return false;
        }
    }

    private byte[] Stamped(bool isToken, string hash = "-sha256", IReadOnlyList<string>? query = null)
    {
        var name = $"{hash}-{query?.Count ?? 1}-{isToken}.out";
        if (!File.Exists(_folder.At(name)))
        {
            OpenSsl(["ts", "-query", "-data", "seal.jws", hash, .. query ?? ["-cert"], "-out", "query.tsq"]);
            OpenSsl(["ts", "-reply", "-config", "tsa.cnf", "-section", "tsa", "-queryfile", "query.tsq", "-signer", "tsa.pem", "-inkey", "tsa.key", "-out", name, .. isToken ? ["-token_out"] : Array.Empty<string>()]);
        }

        return File.ReadAllBytes(_folder.At(name));
    }

    private string Refusal(byte[] file, SignedSeal? seal = null) => Assert.Throws<FormatException>(() => SealStamp.Read(file, seal ?? _seal)).Message;

    private void OpenSsl(params string[] arguments) => OtherTools.Do(_folder.Path, "openssl", arguments);
}
