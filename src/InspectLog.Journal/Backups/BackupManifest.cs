using System.Globalization;
using System.Text.Json;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>A file of a backup.</summary>
/// <param name="Path">Its path below the folder, with slashes.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">Lower-case hex.</param>
public sealed record BackedUpFile(string Path, long Bytes, string Sha256);

/// <summary>What a backup holds, as its file <c>backup.json</c> says.</summary>
/// <param name="Time">When it was completed.</param>
/// <param name="Program">The program that made it.</param>
/// <param name="Files">Every file of it.</param>
public sealed record BackupManifest(DateTimeOffset Time, string Program, IReadOnlyList<BackedUpFile> Files)
{
    /// <summary>Into how many parts the files are parted that are read back in turn.</summary>
    public const int Turns = 10;

    internal const string FileName = "backup.json";

    private const int Version = 1;
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    private static readonly JsonSerializerOptions Format = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>Which part of the files that were there before was read back when it was made: 0 to 9.</summary>
    public int Turn { get; init; }

    /// <summary>Whether a file is of a part.</summary>
    /// <param name="file">A file that is named by its hash.</param>
    /// <param name="turn">The part.</param>
    internal static bool IsOfTurn(BackedUpFile file, int turn) =>
        int.Parse(file.Sha256.AsSpan(0, 6), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture) % Turns == turn;

    /// <summary>Whether it holds the keys.</summary>
    public bool HasKeys => Files.Any(file => DataFiles.IsKey(file.Path));

    /// <summary>The file.</summary>
    internal byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(
        new Json(Version, Time.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture), Program, Files, Turn), Format);

    /// <summary>Reads the file.</summary>
    /// <exception cref="FormatException">It is none that is known here, in a clause.</exception>
    internal static BackupManifest Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            var read = JsonSerializer.Deserialize<Json>(bytes, Format) ?? throw new FormatException("it is empty");
            return read.Version != Version ? throw new FormatException($"it is of version {read.Version}, which is not known here. Look for a newer InspectLog")
                : read.Files.FirstOrDefault(file => !PathBelow.Is(file.Path)) is { } file ? throw new FormatException($"it names {file.Path}, which leads elsewhere")
                : new(DateTimeOffset.ParseExact(read.Time, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal), read.Program, read.Files) { Turn = Math.Clamp(read.Turn, 0, Turns - 1) };
        }
        catch (JsonException problem)
        {
            throw new FormatException("it cannot be read", problem);
        }
    }

    private sealed record Json(int Version, string Time, string Program, IReadOnlyList<BackedUpFile> Files, int Turn = 0);
}
