using System.Security.Cryptography;

namespace InspectLog.Journal.Sealing;

/// <summary>The public half of a key that seals are made with.</summary>
public sealed class SealPublicKey
{
    private readonly byte[] _info;

    private SealPublicKey(ECDsa key)
    {
        var point = key.ExportParameters(includePrivateParameters: false).Q;
        (X, Y) = (point.X!, point.Y!);
        _info = key.ExportSubjectPublicKeyInfo();
        Pem = key.ExportSubjectPublicKeyInfoPem();
        Fingerprint = Convert.ToHexStringLower(SHA256.HashData(_info));
    }

    /// <summary>SHA-256 of the key's SubjectPublicKeyInfo in DER (RFC 5280, section 4.1.2.7), 64 lower-case hex digits. Made
    /// of a PEM file, it is <c>openssl pkey -pubin -in KEY.pem -outform DER | sha256sum</c>.</summary>
    public string Fingerprint { get; }

    /// <summary>The key as a PEM text, for other tools.</summary>
    public string Pem { get; }

    /// <summary>First coordinate of its point, 32 bytes.</summary>
    internal byte[] X { get; }

    /// <summary>Second coordinate of its point, 32 bytes.</summary>
    internal byte[] Y { get; }

    /// <summary>The public half of a key on P-256.</summary>
    internal static SealPublicKey Of(ECDsa key) => new(key);

    /// <summary>The key of a point.</summary>
    /// <exception cref="FormatException">The point is not on the curve.</exception>
    internal static SealPublicKey OfPoint(byte[] x, byte[] y)
    {
        if (x.Length != Es256.NumberBytes || y.Length != Es256.NumberBytes)
        {
            throw new FormatException($"its key is not of the curve {Es256.Curve}");
        }

        try
        {
            using var key = ECDsa.Create(new ECParameters { Curve = ECCurve.NamedCurves.nistP256, Q = new() { X = x, Y = y } });
            return new(key);
        }
        catch (CryptographicException problem)
        {
            throw new FormatException($"its key is no point of the curve {Es256.Curve}", problem);
        }
    }

    /// <summary>Whether a signature is this key's, of these bytes.</summary>
    internal bool Verify(ReadOnlySpan<byte> data, ReadOnlySpan<byte> signature)
    {
        using var key = ECDsa.Create();
        key.ImportSubjectPublicKeyInfo(_info, out _);
        return Es256.Verify(key, data, signature);
    }
}
