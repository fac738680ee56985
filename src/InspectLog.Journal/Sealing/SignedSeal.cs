using System.Security.Cryptography;
using System.Text;

namespace InspectLog.Journal.Sealing;

/// <summary>A seal with its signature, which was verified: there is no other way to get one.</summary>
public sealed class SignedSeal
{
    /// <summary>What the names of seal files end with.</summary>
    public const string Ending = ".jws";

    private readonly JwsParts _parts;

    private SignedSeal(JwsParts parts)
    {
        _parts = parts;
        Key = SealHeader.Read(parts.Header);
        Require(Key.Verify(parts.SigningInput, parts.Signature), "its signature is not that of its key");
        Seal = SealPayload.Read(parts.Payload);
        Compact = parts.Compact;
    }

    /// <summary>What it says.</summary>
    public Seal Seal { get; }

    /// <summary>The key it was signed with, which may be anybody's: compare its fingerprint with one that came another way.
    /// </summary>
    public SealPublicKey Key { get; }

    /// <summary>The JWS in its compact serialization, with nothing after it: the text of its file.</summary>
    public string Compact { get; }

    /// <summary>The JWS without its payload, to lie beside a file of that.</summary>
    public string Detached => _parts.Detached;

    /// <summary>The payload.</summary>
    public ReadOnlyMemory<byte> Payload => _parts.Payload;

    /// <summary>The very bytes that are signed.</summary>
    public ReadOnlyMemory<byte> SignedBytes => _parts.SigningInput;

    /// <summary>The signature in DER, as other tools read it.</summary>
    public ReadOnlyMemory<byte> DerSignature => Es256.ToDer(_parts.Signature);

    /// <summary>The name of its file: how many entries it is of, and the beginning of its own hash, so that the same seal has
    /// one name everywhere and two have never the same.</summary>
    public string FileName
    {
        get
        {
            var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(Compact)));
            return FormattableString.Invariant($"{Seal.Count:D8}-{hash[..16]}{Ending}");
        }
    }

    /// <summary>Signs a seal.</summary>
    public static SignedSeal Sign(Seal seal, SealKey key)
    {
        var parts = new JwsParts(SealHeader.Write(key.Public), SealPayload.Write(seal), []);
        return new(parts with { Signature = key.Sign(parts.SigningInput) });
    }

    /// <summary>Reads a seal and verifies its signature.</summary>
    /// <exception cref="FormatException">It is no seal, or its signature is not that of its key; in a clause.</exception>
    public static SignedSeal Read(string compact) => new(JwsParts.Read(compact));

    /// <summary>Reads a seal whose payload lies beside it, and verifies its signature.</summary>
    /// <exception cref="FormatException">It is no seal of this payload, in a clause.</exception>
    public static SignedSeal Read(string detached, ReadOnlyMemory<byte> payload) => new(JwsParts.Read(detached, payload.ToArray()));

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new FormatException(otherwise);
        }
    }
}
