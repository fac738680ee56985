using System.Buffers;
using System.Buffers.Text;

namespace InspectLog.Journal.Sealing;

/// <summary>Base64url without padding (RFC 7515, section 2), read strictly: one spelling for each sequence of bytes.
/// </summary>
internal static class StrictBase64Url
{
    /// <summary>The spelling of some bytes.</summary>
    public static string Encode(ReadOnlySpan<byte> bytes) => Base64Url.EncodeToString(bytes);

    /// <summary>The bytes of a spelling.</summary>
    /// <param name="text">The spelling.</param>
    /// <param name="what">What it is, at the beginning of a clause.</param>
    /// <exception cref="FormatException">It is not base64url, or not the one spelling of its bytes.</exception>
    public static byte[] Decode(ReadOnlySpan<char> text, string what)
    {
        // The decoder passes over blanks, takes padding, and need not look at the bits that are left over at the end:
        // so what it gives is spelled again and compared.
        var bytes = new byte[Base64Url.GetMaxDecodedLength(text.Length)];
        return Base64Url.DecodeFromChars(text, bytes, out _, out var length) == OperationStatus.Done
            && text.SequenceEqual(Encode(bytes.AsSpan(0, length)))
            ? bytes[..length]
            : throw new FormatException($"{what} is not base64url in its one spelling");
    }
}
