using System.Text;

namespace InspectLog.Archives.BagIt;

/// <summary>A manifest: which files there are, and the checksum of each (RFC 8493, 2.1.3 and 2.2.1). Pure.</summary>
/// <param name="Files">Checksums in lower-case hex, by path.</param>
/// <param name="Faults">Lines that are none of a manifest.</param>
public sealed record BagManifest(IReadOnlyDictionary<string, string> Files, IReadOnlyList<BagFault> Faults)
{
    /// <summary>A manifest as this program writes it, and as it wants those of its own archives: paths in ordinal order, two
    /// spaces, line feeds. <c>sha256sum -c</c> reads it as well.</summary>
    public static byte[] Write(IEnumerable<KeyValuePair<string, string>> files) => Encoding.UTF8.GetBytes(string.Concat(files
        .OrderBy(file => file.Key, StringComparer.Ordinal)
        .Select(file => $"{file.Value}  {BagPath.Encoded(file.Key)}\n")));

    /// <summary>Reads a manifest.</summary>
    /// <param name="name">Its own name, for what is wrong with it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="checksumLength">How many hex digits a checksum has.</param>
    public static BagManifest Read(string name, string text, int checksumLength)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        var faults = new List<BagFault>();
        foreach (var (at, line) in TagText.Lines(text).Index())
        {
            if (line.Length == 0)
            {
                continue;
            }

            if (Split(line, checksumLength) is not { } entry)
            {
                faults.Add(new(name, $"has a line that is no checksum with a path (line {at + 1})"));
            }
            else if (BagPath.Fault(entry.Path) is { } fault)
            {
                faults.Add(new(name, $"names a file that {fault} (line {at + 1})"));
            }
            else if (!files.TryAdd(entry.Path, entry.Checksum))
            {
                faults.Add(new(name, $"names {entry.Path} twice (line {at + 1})"));
            }
        }

        return new(files, faults);
    }

    private static (string Checksum, string Path)? Split(string line, int checksumLength)
    {
        var end = line.IndexOfAny([' ', '\t']);
        if (end != checksumLength || !line.AsSpan(0, end).ContainsOnlyHex())
        {
            return null;
        }

        var path = line[end..].TrimStart(' ', '\t');
        return path.Length == 0 ? null : (line[..end].ToLowerInvariant(), BagPath.Decoded(path));
    }
}

internal static class Hex
{
    /// <summary>Whether a text is made of hex digits alone, large or small.</summary>
    public static bool ContainsOnlyHex(this ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (!char.IsAsciiHexDigit(c))
            {
                return false;
            }
        }

        return true;
    }
}
