using System.Formats.Asn1;
using System.Security.Cryptography;

namespace InspectLog.Journal.Sealing;

/// <summary>ES256 (RFC 7518, section 3.4): ECDSA on P-256 with SHA-256. A signature is two numbers of 32 bytes, one after
/// the other (IEEE P1363).</summary>
internal static class Es256
{
    /// <summary>Its name in a header.</summary>
    public const string Name = "ES256";

    /// <summary>The name of its curve.</summary>
    public const string Curve = "P-256";

    /// <summary>Length of each coordinate of a point, of the secret number, and of each half of a signature.</summary>
    public const int NumberBytes = 32;

    private const string CurveOid = "1.2.840.10045.3.1.7";
    private const DSASignatureFormat TwoNumbers = DSASignatureFormat.IeeeP1363FixedFieldConcatenation;

    /// <summary>Makes a key.</summary>
    public static ECDsa NewKey() => ECDsa.Create(ECCurve.NamedCurves.nistP256);

    /// <summary>Whether a key is of the one curve that is taken.</summary>
    public static bool IsOfCurve(ECDsa key) =>
        key.ExportParameters(includePrivateParameters: false).Curve is { IsNamed: true } curve && curve.Oid.Value == CurveOid;

    /// <summary>Signs.</summary>
    public static byte[] Sign(ECDsa key, byte[] data) => key.SignData(data, HashAlgorithmName.SHA256, TwoNumbers);

    /// <summary>Whether a signature is the key's, of these bytes.</summary>
    public static bool Verify(ECDsa key, ReadOnlySpan<byte> data, ReadOnlySpan<byte> signature) =>
        signature.Length == 2 * NumberBytes && key.VerifyData(data, signature, HashAlgorithmName.SHA256, TwoNumbers);

    /// <summary>The same signature as other tools write it: SEQUENCE of two INTEGERs in DER (RFC 3279, section 2.2.3).</summary>
    public static byte[] ToDer(ReadOnlySpan<byte> signature)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteIntegerUnsigned(WithoutZeros(signature[..NumberBytes]));
            writer.WriteIntegerUnsigned(WithoutZeros(signature[NumberBytes..]));
        }

        return writer.Encode();
    }

    private static ReadOnlySpan<byte> WithoutZeros(ReadOnlySpan<byte> number)
    {
        var rest = number.TrimStart((byte)0);
        return rest.IsEmpty ? number[^1..] : rest;
    }
}
