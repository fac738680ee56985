using System.Security.Cryptography;
using System.Text;

namespace InspectLog.Paper.Drawing;

/// <summary>Puts what follows from the file in place of what the library draws by lot, so that the same content makes the same
/// bytes: the tags of embedded fonts (ISO 32000-1, 9.6.4: any six letters that differ within a file) and the file's
/// identifiers (14.4). Nothing changes its length, so what points into the file still does. Pure.</summary>
internal static class SameBytes
{
    private const int TagLength = 6;
    private const int KeyLength = 10; // of /FontName/ and of /BaseFont/

    private static readonly byte[][] Identifiers =
    [
        "<xmpMM:DocumentID>uuid:"u8.ToArray(), "<xmpMM:InstanceID>uuid:"u8.ToArray(),
    ];

    /// <summary>Does it to a whole file, in place.</summary>
    public static void Make(Span<byte> file)
    {
        NameFonts(file);
        var places = Places(file);
        foreach (var (at, length) in places)
        {
            file.Slice(at, length).Fill((byte)'0');
        }

        var hash = SHA256.HashData(file);
        foreach (var (at, length) in places)
        {
            var text = length == 36 ? new Guid(hash.AsSpan(0, 16)).ToString() : Convert.ToHexString(hash.AsSpan(0, 16));
            Encoding.ASCII.GetBytes(text, file.Slice(at, length));
        }
    }

    private static void NameFonts(Span<byte> file)
    {
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var at in All(file, "/FontName/"u8).Concat(All(file, "/BaseFont/"u8)))
        {
            var tag = file.Slice(at + KeyLength, TagLength);
            if (file[at + KeyLength + TagLength] == '+')
            {
                var before = Encoding.ASCII.GetString(tag);
                if (!tags.TryGetValue(before, out var after))
                {
                    tags[before] = after = "PAPER" + (char)('A' + tags.Count);
                }

                Encoding.ASCII.GetBytes(after, tag);
            }
        }
    }

    private static List<(int At, int Length)> Places(ReadOnlySpan<byte> file)
    {
        var places = new List<(int, int)>();
        foreach (var key in Identifiers)
        {
            places.AddRange(All(file, key).Select(at => (at + key.Length, 36)));
        }

        var trailer = file.LastIndexOf("/ID[<"u8);
        if (trailer >= 0)
        {
            places.AddRange([(trailer + 5, 32), (trailer + 5 + 32 + 2, 32)]);
        }

        return places;
    }

    private static List<int> All(ReadOnlySpan<byte> file, ReadOnlySpan<byte> key)
    {
        var found = new List<int>();
        for (var from = 0; file[from..].IndexOf(key) is var at and >= 0; from += at + key.Length)
        {
            found.Add(from + at);
        }

        return found;
    }
}
