using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>A folder of files named by the SHA-256 of their bytes, for reading.</summary>
/// <param name="Root">The folder.</param>
internal sealed record MediaFiles(string Root)
{
    private const int Piece = 1 << 16;

    /// <summary>Where a file of this name has its place.</summary>
    public string PlaceOf(string sha256) => Path.Combine(Root, sha256[..2], sha256);

    /// <summary>Path of a file that is there; null when it is not, or when the name is none.</summary>
    public string? PathOf(string sha256) =>
        IsName(sha256) && File.Exists(PlaceOf(sha256)) ? PlaceOf(sha256) : null;

    /// <summary>Opens a file; null when it is not there, or when the name is none.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public Stream? Open(string sha256)
    {
        try
        {
            return IsName(sha256)
                ? new FileStream(PlaceOf(sha256), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, Piece, FileOptions.Asynchronous | FileOptions.SequentialScan)
                : null;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    /// <summary>Reads a file through and compares it with its name and length.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public MediaCondition Check(MediaFile file)
    {
        if (PathOf(file.Sha256) is not { } path)
        {
            return MediaCondition.Missing;
        }

        using var bytes = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return bytes.Length == file.Bytes && Convert.ToHexStringLower(SHA256.HashData(bytes)) == file.Sha256
            ? MediaCondition.Whole
            : MediaCondition.Damaged;
    }

    /// <summary>Whether a text can be the name of one: a SHA-256 in lower-case hex.</summary>
    public static bool IsName(string sha256) => sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower);
}

/// <summary>What reading a kept file through has shown.</summary>
public enum MediaCondition
{
    /// <summary>It is the file the journal names.</summary>
    Whole,

    /// <summary>It is not there.</summary>
    Missing,

    /// <summary>Its bytes are not the ones that were kept.</summary>
    Damaged,

    /// <summary>It is not there, and is listed as withheld from this copy of the journal.</summary>
    Withheld,
}
