using InspectLog.Archives.BagIt;

namespace InspectLog.Archives.Checking;

internal static class TreeReading
{
    private const int Most = 64 * 1024 * 1024;

    /// <summary>The bytes of a file.</summary>
    /// <exception cref="InvalidDataException">They are not what the container says of them.</exception>
    public static byte[] Whole(IFileTree tree, string path)
    {
        using var file = tree.Open(path);
        var bytes = new byte[tree.Lengths[path]];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>The bytes of a file; null where it is not there, or they cannot be read.</summary>
    public static byte[]? TryWhole(IFileTree tree, string path)
    {
        if (!tree.Lengths.TryGetValue(path, out var length) || length > Most)
        {
            return null;
        }

        try
        {
            return Whole(tree, path);
        }
        catch (Exception damage) when (damage is InvalidDataException or EndOfStreamException)
        {
            return null;
        }
    }
}
