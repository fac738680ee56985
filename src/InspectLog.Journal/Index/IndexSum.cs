using InspectLog.Journal.Storage;
using System.Security.Cryptography;
using System.Text;

namespace InspectLog.Journal.Index;

/// <summary>The SHA-256 of the index file as it was last closed in good order, in a file beside it. LiteDB keeps no
/// checksum of its pages, so a flipped bit would give wrong hits, missing ones, or other words; one sum of all bytes
/// leaves none of that unseen, and costs a second for a gigabyte.</summary>
internal static class IndexSum
{
    /// <summary>Whether an index file is byte for byte the one that was closed.</summary>
    public static bool Holds(string path)
    {
        try
        {
            return File.Exists(path) && File.Exists(PlaceOf(path)) && File.ReadAllText(PlaceOf(path)) == Of(path);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return false; // whatever it is, the index is made again
        }
    }

    /// <summary>Notes the sum of an index file that was closed.</summary>
    /// <returns>Whether it could be noted; else the next start makes the index again.</returns>
    public static bool Note(string path)
    {
        try
        {
            File.WriteAllText(PlaceOf(path), Of(path), Encoding.ASCII);
            return true;
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return false;
        }
    }

    /// <summary>Forgets the sum, before the file changes.</summary>
    public static void Forget(string path) => File.Delete(PlaceOf(path));

    private static string PlaceOf(string path) => Path.ChangeExtension(path, ".sha256");

    private static string Of(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }
}
