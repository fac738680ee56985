using System.Security.Cryptography;

namespace InspectLog.Journal.Storage;

/// <summary>A folder of check sheets named by the SHA-256 of their bytes, for reading.</summary>
/// <param name="Root">The folder.</param>
internal sealed record SheetFiles(string Root)
{
    /// <summary>Where a sheet of this hash has its place.</summary>
    public string PlaceOf(string sha256) => Path.Combine(Root, $"{sha256}.json");

    /// <summary>The bytes of a sheet; null when it is not there, or when what is there are not its bytes.</summary>
    /// <param name="sha256">64 lower-case hex digits; anything else gives null.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public byte[]? Read(string sha256) =>
        IsThere(sha256) && File.ReadAllBytes(PlaceOf(sha256)) is var bytes && HashOf(bytes) == sha256 ? bytes : null;

    /// <summary>What became of a sheet.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public MediaCondition Check(string sha256) =>
        !IsThere(sha256) ? MediaCondition.Missing
        : Read(sha256) is null ? MediaCondition.Damaged
        : MediaCondition.Whole;

    /// <summary>The name of a sheet with these bytes.</summary>
    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    // A hash comes from a journal, so it is looked at before it becomes part of a path.
    private bool IsThere(string sha256) =>
        sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower) && File.Exists(PlaceOf(sha256));
}
