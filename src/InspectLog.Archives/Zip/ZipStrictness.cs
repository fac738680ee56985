namespace InspectLog.Archives.Zip;

/// <summary>Compares a ZIP with the one spelling that <see cref="ZipSpelling"/> gives to what it holds.</summary>
internal static class ZipStrictness
{
    /// <summary>The first difference in what stands around the files, in words; null where there is none. The files'
    /// own bytes are not looked at.</summary>
    /// <param name="zip">The ZIP.</param>
    /// <param name="spelling">How it should be written.</param>
    /// <param name="files">The files in the order in which it lists them.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static string? Difference(Stream zip, ZipSpelling spelling, IEnumerable<(string Path, long Length, uint Crc32)> files)
    {
        var placed = new List<ZipFile>();
        var at = 0L;
        foreach (var (path, length, crc32) in files)
        {
            var file = new ZipFile(path, length, crc32, at);
            var before = spelling.Before(file);
            if (DifferenceAt(zip, before, at) is { } where)
            {
                return FormattableString.Invariant($"byte {where}, just before {path}");
            }

            placed.Add(file);
            at += before.Length + length;
        }

        var after = spelling.After(placed, at);
        return DifferenceAt(zip, after, at) is { } there ? FormattableString.Invariant($"byte {there}, in the list of files")
            : zip.Length != at + after.Length ? FormattableString.Invariant($"byte {at + after.Length}, where it should end")
            : null;
    }

    private static long? DifferenceAt(Stream zip, byte[] expected, long at)
    {
        if (at < 0 || at > zip.Length)
        {
            return zip.Length;
        }

        var there = new byte[expected.Length];
        zip.Position = at;
        var read = zip.ReadAtLeast(there, there.Length, throwOnEndOfStream: false);
        var same = there.AsSpan(0, read).CommonPrefixLength(expected);
        return same == expected.Length ? null : at + same;
    }
}
