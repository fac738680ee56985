using System.Text;

namespace InspectLog.Archives.BagIt;

/// <summary>The text files of a bag. Pure.</summary>
public static class TagText
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The text of bytes; null where they are not UTF-8, or begin with a byte order mark, which a tag file has not.
    /// </summary>
    public static string? Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return bytes.StartsWith(ByteOrderMark) ? null : StrictUtf8.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>Its lines: each ends with a line feed, a carriage return, or both (RFC 8493, 2).</summary>
    public static IReadOnlyList<string> Lines(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return lines[^1].Length == 0 ? lines[..^1] : lines;
    }
}
