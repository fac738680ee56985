using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

public sealed class KeyFingerprintTests : IDisposable
{
    private readonly SealKey _key = SealKey.Make();

    public void Dispose() => _key.Dispose();

    [Fact]
    public void Printed_fingerprint_is_eight_groups_and_is_known_again_however_it_is_typed()
    {
        var printed = KeyFingerprint.Printed(_key.Public);

        Assert.Matches("^[0-9a-f]{4}( [0-9a-f]{4}){7}$", printed);
        foreach (var typed in new[] { printed, printed.ToUpperInvariant(), printed.Replace(' ', ':'), printed.Replace(" ", "", StringComparison.Ordinal), _key.Public.Fingerprint })
        {
            Assert.True(KeyFingerprint.Is(_key.Public, KeyFingerprint.Read(typed)!));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("9f86d081")]
    [InlineData("9f86d081884c7d659a2feaa0c55ad01")]
    [InlineData("9f86d081884c7d659a2feaa0c55ad01g")]
    [InlineData("9f86d081884c7d659a2feaa0c55ad0159f86d081884c7d659a2feaa0c55ad0150")]
    public void What_is_too_short_too_long_or_not_hex_is_no_fingerprint(string typed) => Assert.Null(KeyFingerprint.Read(typed));

    [Fact]
    public void Fingerprint_of_another_key_is_not_this_ones()
    {
        using var other = SealKey.Make();

        Assert.False(KeyFingerprint.Is(_key.Public, other.Public.Fingerprint));
        Assert.False(KeyFingerprint.Is(_key.Public, KeyFingerprint.Read(KeyFingerprint.Printed(other.Public))!));
    }
}
