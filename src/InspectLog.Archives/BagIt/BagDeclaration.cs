using System.Text;

namespace InspectLog.Archives.BagIt;

/// <summary>The file that says that a folder is a bag (RFC 8493, 2.1.1). Pure.</summary>
public static class BagDeclaration
{
    /// <summary>Its name.</summary>
    public const string FileName = "bagit.txt";

    /// <summary>The version of BagIt that is written and read.</summary>
    public const string Version = "1.0";

    /// <summary>As this program writes it.</summary>
    public static byte[] Bytes => Encoding.ASCII.GetBytes($"BagIt-Version: {Version}\nTag-File-Character-Encoding: UTF-8\n");

    /// <summary>What is wrong with one; null where nothing is.</summary>
    public static BagFault? Fault(ReadOnlySpan<byte> bytes)
    {
        if (TagText.Read(bytes) is not { } text)
        {
            return new(FileName, "is not plain UTF-8 without a byte order mark");
        }

        return TagText.Lines(text) switch
        {
            [var version, var encoding] when ValueOf(version, "BagIt-Version") is { } number && ValueOf(encoding, "Tag-File-Character-Encoding") is { } name =>
                number != Version ? new(FileName, $"says version {Short(number)} of BagIt, and only {Version} is known here. Look for a newer InspectLog")
                : !name.Equals("UTF-8", StringComparison.OrdinalIgnoreCase) ? new(FileName, "says that the tag files are not in UTF-8, which alone is read here")
                : null,
            _ => new(FileName, "does not have the two lines that make a folder a bag"),
        };
    }

    // Exactly one space, and no other around the colon: the RFC gives the two lines letter by letter.
    private static string? ValueOf(string line, string label) =>
        line.StartsWith($"{label}: ", StringComparison.Ordinal) && line[(label.Length + 2)..] is { Length: > 0 } value && value.Trim() == value
            ? value
            : null;

    private static string Short(string text) => text[..Math.Min(text.Length, 20)];
}
