using System.Security.Cryptography;
using InspectLog.Photos;

namespace InspectLog.App.Media;

/// <summary>Photos that come in pieces, since the line to a phone breaks: what has come of each lies in the data folder until
/// the form that names it is in the journal, and after a break only the rest is sent. None of it is acknowledged as kept: the
/// phone keeps its photo until then. Safe for use by many threads.</summary>
/// <param name="dataFolder">The data folder.</param>
/// <param name="time">The clock by which what nobody finishes grows old.</param>
public sealed class PhotoPieces(string dataFolder, TimeProvider time)
{
    /// <summary>The field by which a form names a photo that came in pieces.</summary>
    public const string Field = "piece";

    /// <summary>Largest piece, bytes: on a slow line it takes some seconds.</summary>
    public const int LargestPiece = 256 * 1024;

    /// <summary>So many unfinished photos are kept; the oldest make room.</summary>
    private const int Most = 60;

    private static readonly TimeSpan Longest = TimeSpan.FromDays(7);

    private readonly Lock _lock = new();

    private string Folder => Path.Combine(dataFolder, "pieces");

    /// <summary>Adds a piece where it belongs: right after what is there.</summary>
    /// <param name="sha256">The photo: SHA-256 of all its bytes, 64 lower-case hex digits.</param>
    /// <param name="at">Where the piece begins, bytes.</param>
    /// <param name="piece">The piece; none asks only how much is there.</param>
    /// <returns>How many bytes are there now, from the beginning. A piece that begins elsewhere, or goes beyond the largest
    /// photo, is not taken.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    public long Add(string sha256, long at, ReadOnlySpan<byte> piece)
    {
        lock (_lock)
        {
            var path = PathOf(sha256);
            var there = LengthOf(path);
            if (piece.IsEmpty || at != there || at + piece.Length > PhotoIntake.LargestFile)
            {
                return there;
            }

            if (there == 0)
            {
                Directory.CreateDirectory(Folder);
                MakeRoom();
            }

            return Append(path, there, piece);
        }
    }

    /// <summary>A photo whose pieces are all there; null where some are missing, or are not of this photo: then they are gone.
    /// </summary>
    /// <exception cref="IOException">It could not be read.</exception>
    public byte[]? Whole(string sha256)
    {
        lock (_lock)
        {
            var path = PathOf(sha256);
            if (!File.Exists(path))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            if (Convert.ToHexStringLower(SHA256.HashData(bytes)) == sha256)
            {
                return bytes;
            }

            File.Delete(path);
            return null;
        }
    }

    /// <summary>Forgets a photo that is in the journal.</summary>
    public void Forget(string sha256)
    {
        lock (_lock)
        {
            File.Delete(PathOf(sha256));
        }
    }

    /// <summary>Whether a text can name a photo.</summary>
    public static bool IsName(string sha256) => sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower);

    private static long LengthOf(string path) => new FileInfo(path) is { Exists: true, Length: var length } ? length : 0;

    /// <summary>Half a piece, as where the disk is full, is cut off again.</summary>
    private static long Append(string path, long there, ReadOnlySpan<byte> piece)
    {
        using var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.Write);
        try
        {
            file.Position = there;
            file.Write(piece);
            file.Flush();
            return file.Length;
        }
        catch (IOException)
        {
            file.SetLength(there);
            throw;
        }
    }

    private string PathOf(string sha256) =>
        IsName(sha256) ? Path.Combine(Folder, sha256) : throw new ArgumentException("No SHA-256.", nameof(sha256));

    private void MakeRoom()
    {
        var files = new DirectoryInfo(Folder).GetFiles().OrderByDescending(file => file.LastWriteTimeUtc).ToList();
        var old = time.GetUtcNow().UtcDateTime - Longest;
        foreach (var file in files.Where((file, newer) => newer >= Most - 1 || file.LastWriteTimeUtc < old))
        {
            file.Delete();
        }
    }
}
