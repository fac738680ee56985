using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using System.Text;

namespace InspectLog.Journal.Sealing;

/// <summary>A time stamp (RFC 3161) of a seal: somebody says that it was there at a time. Who that is and whether to believe
/// them is for the reader: no list of trusted issuers is asked.</summary>
public sealed class SealStamp
{
    private const int Granted = 0;
    private const int GrantedWithChanges = 1;

    // SHA-256, SHA-384, SHA-512: what is older can be forged by now.
    private static readonly string[] Hashes = ["2.16.840.1.101.3.4.2.1", "2.16.840.1.101.3.4.2.2", "2.16.840.1.101.3.4.2.3"];

    private SealStamp(Rfc3161TimestampToken token, ReadOnlyMemory<byte> bytes, X509Certificate2 signer)
    {
        Token = bytes;
        Time = token.TokenInfo.Timestamp;
        Signer = Plain(signer.Subject);
        Issuer = Plain(signer.Issuer);
        Certificate = Convert.ToHexStringLower(SHA256.HashData(signer.RawData));
    }

    /// <summary>When, by the issuer's clock.</summary>
    public DateTimeOffset Time { get; }

    /// <summary>Who stamped it, as the certificate in it says.</summary>
    public string Signer { get; }

    /// <summary>Who gave them the certificate, as it says.</summary>
    public string Issuer { get; }

    /// <summary>SHA-256 of the certificate, lower-case hex, to be compared with one that came another way.</summary>
    public string Certificate { get; }

    /// <summary>The token in DER.</summary>
    internal ReadOnlyMemory<byte> Token { get; }

    /// <summary>Reads a stamp and verifies that it is of a seal: of the text of its file, from the first character to the last.
    /// </summary>
    /// <param name="file">The token, or the answer of the issuer that brings it, in DER.</param>
    /// <param name="seal">The seal.</param>
    /// <exception cref="FormatException">It is no stamp of this seal, in a clause.</exception>
    public static SealStamp Read(byte[] file, SignedSeal seal)
    {
        var (token, bytes) = Decode(file) ?? Decode(TokenOfAnswer(file)) ?? throw new FormatException("it is no time stamp");
        if (!Hashes.Contains(token.TokenInfo.HashAlgorithmId.Value))
        {
            throw new FormatException("its time stamp is made with a hash that can be forged");
        }

        if (!token.VerifySignatureForData(Encoding.ASCII.GetBytes(seal.Compact), out var signer))
        {
            throw new FormatException("its time stamp is of something else, or was changed, or brings no certificate of who made it");
        }

        using (signer)
        {
            return token.TokenInfo.Timestamp.UtcDateTime is var at && at >= signer.NotBefore.ToUniversalTime() && at <= signer.NotAfter.ToUniversalTime()
                ? new(token, bytes, signer)
                : throw new FormatException("its time stamp was made when the certificate of who made it was not valid");
        }
    }

    private static (Rfc3161TimestampToken Token, ReadOnlyMemory<byte> Bytes)? Decode(ReadOnlyMemory<byte> bytes) =>
        Rfc3161TimestampToken.TryDecode(bytes, out var token, out var read) && read == bytes.Length ? (token, bytes) : null;

    /// <summary>The token in a TimeStampResp (RFC 3161, section 2.4.2).</summary>
    private static ReadOnlyMemory<byte> TokenOfAnswer(ReadOnlyMemory<byte> file)
    {
        try
        {
            var reader = new AsnReader(file, AsnEncodingRules.BER);
            var answer = reader.ReadSequence();
            reader.ThrowIfNotEmpty();
            var status = answer.ReadSequence();
            if (!status.TryReadInt32(out var granted) || granted is not (Granted or GrantedWithChanges))
            {
                throw new FormatException("the issuer refused to make a time stamp");
            }

            var token = answer.ReadEncodedValue();
            answer.ThrowIfNotEmpty();
            return token;
        }
        catch (AsnContentException problem)
        {
            throw new FormatException("it is no time stamp", problem);
        }
    }

    // Names in certificates are anybody's: nothing in them may move a terminal's cursor.
    private static string Plain(string name) => string.Concat(name.Where(c => !char.IsControl(c)));
}
