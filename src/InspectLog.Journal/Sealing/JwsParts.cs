using System.Text;

namespace InspectLog.Journal.Sealing;

/// <summary>The three parts of a JWS in its compact serialization (RFC 7515, section 7.1), of whatever header.</summary>
/// <param name="Header">The protected header.</param>
/// <param name="Payload">What is signed.</param>
/// <param name="Signature">The signature.</param>
internal sealed record JwsParts(byte[] Header, byte[] Payload, byte[] Signature)
{
    // Hundreds of thousands of withheld entries fit.
    private const int MostCharacters = 16 << 20;

    /// <summary>The very bytes that are signed.</summary>
    public byte[] SigningInput => Encoding.ASCII.GetBytes($"{StrictBase64Url.Encode(Header)}.{StrictBase64Url.Encode(Payload)}");

    /// <summary>The compact serialization.</summary>
    public string Compact => $"{Encoding.ASCII.GetString(SigningInput)}.{StrictBase64Url.Encode(Signature)}";

    /// <summary>The same with the payload left out, to lie beside a file of it (RFC 7515, appendix F).</summary>
    public string Detached => $"{StrictBase64Url.Encode(Header)}..{StrictBase64Url.Encode(Signature)}";

    /// <summary>Reads a compact serialization: three parts and nothing before, between or after.</summary>
    /// <exception cref="FormatException">It is none, in a clause.</exception>
    public static JwsParts Read(string compact)
    {
        if (compact.Length > MostCharacters)
        {
            throw new FormatException("it is too long");
        }

        return compact.Split('.') is [var header, var payload, var signature]
            ? new(
                StrictBase64Url.Decode(header, "its header"),
                StrictBase64Url.Decode(payload, "its payload"),
                StrictBase64Url.Decode(signature, "its signature"))
            : throw new FormatException("it has not the three parts of a JWS");
    }

    /// <summary>Reads one whose payload lies beside it.</summary>
    /// <exception cref="FormatException">It is none, or has a payload of its own.</exception>
    public static JwsParts Read(string detached, byte[] payload)
    {
        var parts = Read(detached);
        return parts.Payload.Length == 0
            ? parts with { Payload = payload }
            : throw new FormatException("it has a payload of its own");
    }
}
