using System.Text;
using System.Text.Json.Nodes;
using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

public sealed partial class SignedSealTests : IDisposable
{
    private readonly SealKey _key = SealKey.Make();
    private readonly SignedSeal _sealed;

    public SignedSealTests()
    {
        var journal = SomeSeals.Journal(9);
        _sealed = SignedSeal.Sign(
            SomeSeals.Of(journal.Withholding(2, 5, 6, 7), SomeSeals.Of(SomeSeals.Journal(3).Chain()).AsEarlier()) with { Manifest = new string('a', 64) }, _key);
    }

    private string[] Parts => _sealed.Compact.Split('.');

    public void Dispose() => _key.Dispose();

    [Fact]
    public void Seal_says_after_signing_and_reading_what_it_said_before()
    {
        var read = SignedSeal.Read(_sealed.Compact);

        Assert.Equivalent(_sealed.Seal, read.Seal, strict: true);
        Assert.Equal([2, 5, 6, 7], read.Seal.Withheld);
        Assert.Equal(_key.Public.Fingerprint, read.Key.Fingerprint);
        Assert.Equal(_sealed.Compact, read.Compact);
        Assert.Equal(_sealed.FileName, read.FileName);
    }

    [Fact]
    public void Payload_is_the_canonical_json_that_the_format_page_describes()
    {
        var seal = _sealed.Seal;

        Assert.Equal(
            $$"""{"count":9,"earlier":{"count":3,"head":"{{seal.Earlier!.Head}}"},"first":"{{seal.First}}","head":"{{seal.Head}}","manifest":"{{new string('a', 64)}}","program":"InspectLog 1.0","record":"{{seal.Record}}","time":"2026-11-25T10:30:00Z","vehicle":"marigold","version":1,"withheld":[[2,2],[5,7]]}""",
            Encoding.UTF8.GetString(_sealed.Payload.Span));
    }

    [Fact]
    public void Detached_seal_is_read_with_its_payload_and_with_no_other()
    {
        Assert.Equal($"{Parts[0]}..{Parts[2]}", _sealed.Detached);
        Assert.Equal(_sealed.Compact, SignedSeal.Read(_sealed.Detached, _sealed.Payload).Compact);

        var other = _sealed.Payload.ToArray();
        other[10] ^= 1;
        Assert.Throws<FormatException>(() => SignedSeal.Read(_sealed.Detached, other));
        Assert.Contains("payload of its own", Assert.Throws<FormatException>(() => SignedSeal.Read(_sealed.Compact, _sealed.Payload)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_changed_character_of_a_seal_is_found()
    {
        var compact = _sealed.Compact;
        for (var at = 0; at < compact.Length; at++)
        {
            foreach (var other in new[] { 'A', 'z', '.', '=', '\n' }.Where(c => c != compact[at]))
            {
                var changed = compact[..at] + other + compact[(at + 1)..];
                Assert.Throws<FormatException>(() => SignedSeal.Read(changed));
            }
        }
    }

    [Theory]
    [InlineData("\n")]
    [InlineData(" ")]
    [InlineData(".")]
    [InlineData("=")]
    [InlineData("==")]
    [InlineData("A")]
    [InlineData("\0")]
    public void Nothing_may_stand_before_or_after_a_seal(string junk)
    {
        Assert.Throws<FormatException>(() => SignedSeal.Read(_sealed.Compact + junk));
        Assert.Throws<FormatException>(() => SignedSeal.Read(junk + _sealed.Compact));
        Assert.Throws<FormatException>(() => SignedSeal.Read($"{Parts[0]}.{Parts[1]}{junk}.{Parts[2]}"));
    }

    [Fact]
    public void Other_spelling_of_the_same_bytes_is_refused()
    {
        // 64 bytes leave four bits of the last character unused; a decoder that ignores them takes sixteen spellings.
        const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
        var last = Letters.IndexOf(_sealed.Compact[^1], StringComparison.Ordinal);
        Assert.Equal(0, last % 16);
        for (var n = 1; n < 16; n++)
        {
            var other = _sealed.Compact[..^1] + Letters[last + n];
            Assert.Contains("one spelling", Assert.Throws<FormatException>(() => SignedSeal.Read(other)).Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("\"alg\":\"ES256\"", "\"alg\":\"none\"", "algorithm is none")]
    [InlineData("\"alg\":\"ES256\"", "\"alg\":\"ES384\"", "algorithm is ES384")]
    [InlineData("\"alg\":\"ES256\"", "\"alg\":\"HS256\"", "algorithm is HS256")]
    [InlineData("\"alg\":\"ES256\",", "", "algorithm is not named")]
    [InlineData("\"alg\":\"ES256\"", "\"alg\":[\"ES256\"]", "algorithm is not named")]
    [InlineData("inspectlog-seal+jws", "JWT", "type is JWT")]
    [InlineData("inspectlog-seal+jws", "INSPECTLOG-SEAL+JWS", "type is")]
    [InlineData("\"crv\":\"P-256\"", "\"crv\":\"P-384\"", "not of the curve")]
    [InlineData("\"crv\":\"P-256\"", "\"crv\":\"secp256k1\"", "not of the curve")]
    [InlineData("\"kty\":\"EC\"", "\"kty\":\"oct\"", "not of the curve")]
    [InlineData("{\"alg\":\"ES256\"", "{\"alg\":\"ES256\",\"alg\":\"ES256\"", "not JSON")]
    [InlineData("\"crv\":\"P-256\"", "\"crv\":\"P-256\",\"crv\":\"P-256\"", "not JSON")]
    [InlineData("{\"alg\":\"ES256\"", "{\"alg\":\"ES256\",\"crit\":[\"b64\"],\"b64\":false", "members or a spelling")]
    [InlineData("{\"alg\":", "{ \"alg\":", "members or a spelling")]
    [InlineData("\"kid\":\"", "\"kid\":\"0", "fingerprint")]
    public void Header_that_is_not_the_one_of_its_key_is_refused_though_the_signature_holds(string part, string other, string reason)
    {
        var header = SomeSeals.HeaderOf(_key).Replace(part, other, StringComparison.Ordinal);
        Assert.NotEqual(SomeSeals.HeaderOf(_key), header);

        var refused = Assert.Throws<FormatException>(() => SignedSeal.Read(SomeSeals.Forged(_key, header, _sealed.Payload.ToArray())));

        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_not_unicode_is_refused_and_stops_nothing()
    {
        var header = SomeSeals.HeaderOf(_key).Replace("inspectlog-seal", "\\ud800", StringComparison.Ordinal);
        var payload = Encoding.UTF8.GetString(_sealed.Payload.Span);
        Assert.Contains("not Unicode", Refusal(header, Encoding.UTF8.GetBytes(payload)), StringComparison.Ordinal);
        Refusal(SomeSeals.HeaderOf(_key), Encoding.UTF8.GetBytes(payload.Replace("InspectLog 1.0", "\\ud800", StringComparison.Ordinal)));
        Refusal(SomeSeals.HeaderOf(_key), Encoding.Latin1.GetBytes(payload.Replace("InspectLog 1.0", "\u00cf", StringComparison.Ordinal)));
        Refusal(SomeSeals.HeaderOf(_key), []);
        Refusal("", Encoding.UTF8.GetBytes(payload));
        Refusal("[]", Encoding.UTF8.GetBytes(payload));
    }

    [Fact]
    public void Unsigned_seal_and_signature_in_der_are_refused()
    {
        var none = SomeSeals.HeaderOf(_key).Replace("ES256", "none", StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => SignedSeal.Read(new JwsParts(Encoding.ASCII.GetBytes(none), _sealed.Payload.ToArray(), []).Compact));
        Assert.Throws<FormatException>(() => SignedSeal.Read($"{Parts[0]}.{Parts[1]}."));
        Assert.Throws<FormatException>(() => SignedSeal.Read($"{Parts[0]}.{Parts[1]}.{StrictBase64Url.Encode(_sealed.DerSignature.Span)}"));
        Assert.Throws<FormatException>(() => SignedSeal.Read($"{Parts[0]}.{Parts[1]}.{StrictBase64Url.Encode(new byte[64])}"));
    }

    [Fact]
    public void Key_that_is_no_point_of_the_curve_is_refused()
    {
        var y = _key.Public.Y.ToArray();
        y[31] ^= 1;
        var header = SomeSeals.HeaderOf(_key).Replace(StrictBase64Url.Encode(_key.Public.Y), StrictBase64Url.Encode(y), StringComparison.Ordinal);

        var refused = Assert.Throws<FormatException>(() => SignedSeal.Read(SomeSeals.Forged(_key, header, _sealed.Payload.ToArray())));

        Assert.Contains("no point of the curve", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Seal_with_another_key_in_its_header_is_refused()
    {
        using var other = SealKey.Make();

        Assert.Throws<FormatException>(() => SignedSeal.Read(SomeSeals.Forged(_key, SomeSeals.HeaderOf(other), _sealed.Payload.ToArray())));
    }
}
