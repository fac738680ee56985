using System.IO.Hashing;

namespace InspectLog.Archives.BagIt;

/// <summary>A bag read through: every file hashed, and all that is not as RFC 8493 wants it.</summary>
/// <param name="Faults">What is wrong; none where the bag is complete and valid.</param>
/// <param name="Sums">What reading each file gave, by path.</param>
/// <param name="Info">What it says of itself; null where it says nothing that can be read.</param>
public sealed record BagReading(IReadOnlyList<BagFault> Faults, IReadOnlyDictionary<string, FileSums> Sums, BagInfo? Info)
{
    /// <summary>Whether the bag is valid: complete, and every checksum is right.</summary>
    public bool IsValid => Faults.Count == 0;
}

/// <summary>What reading a file through gave.</summary>
/// <param name="Length">Bytes.</param>
/// <param name="Sha256">Lower-case hex.</param>
/// <param name="Sha512">Lower-case hex; null where no manifest asks for it.</param>
/// <param name="Crc32">As ZIP has it.</param>
public sealed record FileSums(long Length, string Sha256, string? Sha512, uint Crc32);

internal static class Summing
{
    private const int Piece = 1 << 18;

    /// <summary>Reads a file through once.</summary>
    public static FileSums Of(Stream file, bool withSha512, CancellationToken stop)
    {
        using var sha256 = System.Security.Cryptography.IncrementalHash.CreateHash(System.Security.Cryptography.HashAlgorithmName.SHA256);
        using var sha512 = withSha512 ? System.Security.Cryptography.IncrementalHash.CreateHash(System.Security.Cryptography.HashAlgorithmName.SHA512) : null;
        var crc = new Crc32();
        var piece = new byte[Piece];
        var length = 0L;
        for (var read = file.Read(piece); read > 0; read = file.Read(piece))
        {
            stop.ThrowIfCancellationRequested();
            var bytes = piece.AsSpan(0, read);
            sha256.AppendData(bytes);
            sha512?.AppendData(bytes);
            crc.Append(bytes);
            length += read;
        }

        return new(
            length,
            Convert.ToHexStringLower(sha256.GetHashAndReset()),
            sha512 is null ? null : Convert.ToHexStringLower(sha512.GetHashAndReset()),
            crc.GetCurrentHashAsUInt32());
    }
}
