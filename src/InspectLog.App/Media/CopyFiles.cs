using System.Security.Cryptography;

namespace InspectLog.App.Media;

/// <summary>The folder of the copies and of the slips that hold them to their originals. All of it can be deleted at any
/// time; what does not fit counts as missing.</summary>
/// <param name="Folder">The folder.</param>
public sealed record CopyFiles(string Folder)
{
    private const string Slip = ".json";

    /// <summary>The folder of the copies in a data folder.</summary>
    public static CopyFiles In(string dataFolder) => new(Path.Combine(dataFolder, "copies"));

    /// <summary>The slip of a photo; null where there is none that fits.</summary>
    public PhotoSlip? SlipOf(string sha256) => Bytes(SlipPath(sha256)) is { } json ? PhotoSlip.Read(json, sha256) : null;

    /// <summary>A copy of a photo; null where there is none, or not the one its slip names.</summary>
    public byte[]? Copy(PhotoSlip slip, CopyKind kind) =>
        slip.Of(kind) is { } hash && Bytes(CopyPath(slip.Original, kind)) is { } copy && HashOf(copy) == hash ? copy : null;

    /// <summary>Keeps a copy, before the slip that names it.</summary>
    /// <returns>Its SHA-256.</returns>
    /// <exception cref="IOException">It could not be kept.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public string Keep(string sha256, CopyKind kind, byte[] copy)
    {
        Write(CopyPath(sha256, kind), copy);
        return HashOf(copy);
    }

    /// <summary>Keeps a slip.</summary>
    /// <exception cref="IOException">It could not be kept.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public void Keep(PhotoSlip slip) => Write(SlipPath(slip.Original), slip.ToJson());

    /// <summary>Forgets what was made of a photo, so that it is made anew.</summary>
    /// <exception cref="IOException">It could not be forgotten.</exception>
    public void Forget(string sha256)
    {
        if (Directory.Exists(Path.GetDirectoryName(SlipPath(sha256))))
        {
            File.Delete(SlipPath(sha256));
        }
    }

    /// <summary>Copies that do not fit the slip of their photo: somebody put them there, or a disk spoiled them. None of
    /// them is shown. Paths within the folder, in order. Reads only.</summary>
    public IReadOnlyList<string> Misfits() => !Directory.Exists(Folder) ? [] :
    [
        .. Directory.EnumerateFiles(Folder, "*" + Slip, SearchOption.AllDirectories)
            .Select(path => Path.GetFileNameWithoutExtension(path))
            .Where(name => name.Length == SHA256.HashSizeInBytes * 2)
            .SelectMany(sha256 => SlipOf(sha256) is { } slip ? MisfitsOf(slip) : [])
            .Select(path => Path.GetRelativePath(Folder, path).Replace(Path.DirectorySeparatorChar, '/'))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Removes what versions before slips left: copies that nothing holds to their original.</summary>
    public void RemoveFormer()
    {
        foreach (var path in Directory.Exists(Folder) ? Directory.GetFiles(Folder) : [])
        {
            Forgive(path);
        }
    }

    private IEnumerable<string> MisfitsOf(PhotoSlip slip) => Enum.GetValues<CopyKind>()
        .Where(kind => File.Exists(CopyPath(slip.Original, kind)) && slip.Of(kind) is not null && Copy(slip, kind) is null)
        .Select(kind => CopyPath(slip.Original, kind));

    private string SlipPath(string sha256) => Path.Combine(Folder, sha256[..2], sha256 + Slip);

    private string CopyPath(string sha256, CopyKind kind) =>
        Path.Combine(Folder, sha256[..2], $"{sha256}-{kind.ToString().ToLowerInvariant()}.jpg");

    private static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static byte[]? Bytes(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Half a file is not left behind.</summary>
    private static void Write(string path, byte[] bytes)
    {
        var part = $"{path}.{Path.GetRandomFileName()}.part";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(part, bytes);
            File.Move(part, path, overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Forgive(part);
            throw;
        }
    }

    private static void Forgive(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // It does no harm, and the copies can be deleted at any time.
        }
    }
}
