using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>RFC 7515, appendix A.3: a JWS with ECDSA P-256 SHA-256. The page was not at hand: the values are from memory, and
/// the same in several public copies of the example.</summary>
public sealed class PublishedJwsTests
{
    private const string X = "f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU";
    private const string Y = "x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0";
    private const string D = "jpsQnnGQmL-YBIffH1136cspYG6-0iY7X1fCE9-E9LI";

    private const string Compact =
        "eyJhbGciOiJFUzI1NiJ9"
        + ".eyJpc3MiOiJqb2UiLA0KICJleHAiOjEzMDA4MTkzODAsDQogImh0dHA6Ly9leGFtcGxlLmNvbS9pc19yb290Ijp0cnVlfQ"
        + ".DtEhU3ljbEg8L38VWAfUAqOyKAM6-Xx-F4GawxaepmXFCgfTjDxw5djxLa8ISlSApmWQxfKTUJqPP3-Kg6NU1Q";

    private static SealPublicKey Published => SealPublicKey.OfPoint(StrictBase64Url.Decode(X, "x"), StrictBase64Url.Decode(Y, "y"));

    [Fact]
    public void Published_example_is_taken_apart_and_its_signature_holds()
    {
        var parts = JwsParts.Read(Compact);

        Assert.Equal("""{"alg":"ES256"}""", Encoding.ASCII.GetString(parts.Header));
        Assert.Equal("{\"iss\":\"joe\",\r\n \"exp\":1300819380,\r\n \"http://example.com/is_root\":true}", Encoding.ASCII.GetString(parts.Payload));
        Assert.Equal([14, 209, 33, 83, 121, 99, 108, 72, 60, 47, 127, 21], parts.Signature[..12]);
        Assert.True(Published.Verify(parts.SigningInput, parts.Signature));
        Assert.Equal(Compact, parts.Compact);
    }

    [Fact]
    public void Published_signature_holds_for_no_other_bytes_and_no_other_key()
    {
        var parts = JwsParts.Read(Compact);
        using var other = SealKey.Make();

        Assert.False(Published.Verify(parts.SigningInput.AsSpan(1), parts.Signature));
        Assert.False(Published.Verify(parts.SigningInput, parts.Signature.AsSpan(0, 63)));
        Assert.False(other.Public.Verify(parts.SigningInput, parts.Signature));
    }

    [Fact]
    public void Published_secret_has_the_published_point_and_signs_for_it()
    {
        using var key = SealKey.OfSecret(StrictBase64Url.Decode(D, "d"));
        var input = JwsParts.Read(Compact).SigningInput;

        Assert.Equal(X, StrictBase64Url.Encode(key.Public.X));
        Assert.Equal(Y, StrictBase64Url.Encode(key.Public.Y));
        Assert.True(Published.Verify(input, key.Sign(input)));
    }

    [Fact]
    public void Published_example_is_no_seal()
    {
        Assert.Contains("type is not named", Assert.Throws<FormatException>(() => SignedSeal.Read(Compact)).Message, StringComparison.Ordinal);
    }

    /// <summary>The framework's own reader of DER signatures is the check.</summary>
    [Fact]
    public void Signature_in_der_is_the_same_signature()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        for (var n = 0; n < 300; n++) // some numbers begin with zeros, some with a high bit
        {
            byte[] data = [(byte)n, 1];
            var der = Es256.ToDer(Es256.Sign(key, data));
            Assert.True(key.VerifyData(data, der, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence));
        }
    }

    [Fact]
    public void Small_numbers_of_a_signature_are_written_short_and_zero_as_one_byte()
    {
        var signature = new byte[64];
        signature[31] = 0x80;

        Assert.Equal([0x30, 0x07, 0x02, 0x02, 0x00, 0x80, 0x02, 0x01, 0x00], Es256.ToDer(signature));
    }
}
