using System.Text.Json;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>A recording or photo that a journal names and that this copy of it came without, on purpose.</summary>
/// <param name="File">The file, as the journal names it.</param>
/// <param name="Copy">What was given in its place: of a photo an upright copy without where it was taken. Nothing but the word
/// of whoever withheld the original says that it shows the same. Null where nothing was.</param>
public sealed record WithheldMedia(MediaFile File, MediaFile? Copy);

/// <summary>The list of what a journal came without, as it stands beside the journal (FORMAT.md). Pure.</summary>
public static class WithheldMediaList
{
    /// <summary>Name of the list within a vehicle's folder.</summary>
    internal const string FileName = "withheld.json";

    private static readonly JsonSerializerOptions Format = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>The list as JSON.</summary>
    public static byte[] Write(IReadOnlyList<WithheldMedia> withheld) =>
        JsonSerializer.SerializeToUtf8Bytes(withheld.Select(one => new Line(one.File, one.Copy)), Format);

    /// <summary>The list read from JSON.</summary>
    /// <exception cref="FormatException">It is no such list.</exception>
    public static IReadOnlyList<WithheldMedia> Read(ReadOnlySpan<byte> json)
    {
        try
        {
            var lines = JsonSerializer.Deserialize<List<Line>>(json, Format) ?? [];
            return [.. lines.Select(line => new WithheldMedia(line.File, line.Copy))];
        }
        catch (Exception problem) when (problem is JsonException or NotSupportedException)
        {
            throw new FormatException("it is no list of what was withheld", problem);
        }
    }

    /// <summary>The list beside a vehicle's journal; empty where there is none, or none that can be read: then what is
    /// missing is missing.</summary>
    /// <param name="vehicleFolder">The vehicle's folder.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    internal static IReadOnlyList<WithheldMedia> In(string vehicleFolder)
    {
        var path = Path.Combine(vehicleFolder, FileName);
        try
        {
            return File.Exists(path) ? Read(File.ReadAllBytes(path)) : [];
        }
        catch (FormatException)
        {
            return [];
        }
    }

    private sealed record Line(MediaFile File, MediaFile? Copy = null);
}
