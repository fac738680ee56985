using System.Text;
using System.Text.Json;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Sealing;

/// <summary>The protected header of a seal. It has one spelling for each key, so that nothing can hide in it.</summary>
internal static class SealHeader
{
    /// <summary>The type of a seal (RFC 7515, section 4.1.9), so that no other JWS can be taken for one.</summary>
    public const string Type = "inspectlog-seal+jws";

    /// <summary>The header of seals by a key.</summary>
    public static byte[] Write(SealPublicKey key) => Encoding.ASCII.GetBytes(
        $$"""{"alg":"{{Es256.Name}}","jwk":{"crv":"{{Es256.Curve}}","kty":"EC","x":"{{StrictBase64Url.Encode(key.X)}}","y":"{{StrictBase64Url.Encode(key.Y)}}"},"kid":"{{key.Fingerprint}}","typ":"{{Type}}"}""");

    /// <summary>The key a header names.</summary>
    /// <exception cref="FormatException">It is no header of a seal, in a clause.</exception>
    public static SealPublicKey Read(byte[] header)
    {
        using var document = CanonicalJson.Parse(header);
        var root = document.RootElement;
        Require(Text(root, "alg") == Es256.Name, $"its algorithm is {Text(root, "alg") ?? "not named"}, and only {Es256.Name} is taken");
        Require(Text(root, "typ") == Type, $"its type is {Text(root, "typ") ?? "not named"}, which is not that of a seal");
        Require(root.TryGetProperty("jwk", out var jwk) && jwk.ValueKind == JsonValueKind.Object, "it names no key");
        Require(Text(jwk, "kty") == "EC" && Text(jwk, "crv") == Es256.Curve, $"its key is not of the curve {Es256.Curve}");
        var key = SealPublicKey.OfPoint(
            StrictBase64Url.Decode(Text(jwk, "x") ?? "", "its key"), StrictBase64Url.Decode(Text(jwk, "y") ?? "", "its key"));
        Require(Text(root, "kid") == key.Fingerprint, "the fingerprint it names is not that of its key");
        Require(header.AsSpan().SequenceEqual(Write(key)), "its header has members or a spelling that seals do not have");
        return key;
    }

    private static string? Text(JsonElement from, string name)
    {
        try
        {
            return from.ValueKind == JsonValueKind.Object && from.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String
                ? value.GetString()
                : null;
        }
        catch (InvalidOperationException problem)
        {
            throw new FormatException("its header holds text that is not Unicode", problem);
        }
    }

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new FormatException(otherwise);
        }
    }
}
