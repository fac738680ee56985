using System.Text.Json;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>The recordings and photos that entries name. Pure.</summary>
public static class NamedMedia
{
    /// <summary>The files an entry names: none of one whose body is withheld, and of one of a kind that is not known here
    /// whatever in it has the members of a file.</summary>
    public static IReadOnlyList<MediaFile> Of(JournalEntry entry) => entry switch
    {
        { Body: RecordingKept recording } => [recording.Media],
        { Body: PhotoKept photo } => [photo.Media],
        { Body: VehiclePictured picture } => [picture.Media],
        { UnreadBody: { } json } => InUnknown(json),
        _ => [],
    };

    private static List<MediaFile> InUnknown(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. Within(document.RootElement)];
    }

    private static IEnumerable<MediaFile> Within(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object when AsFile(value) is { } file => [file],
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => Within(member.Value)),
        JsonValueKind.Array => value.EnumerateArray().SelectMany(Within),
        _ => [],
    };

    private static MediaFile? AsFile(JsonElement value) =>
        value.TryGetProperty("sha256", out var sha256) && sha256.ValueKind == JsonValueKind.String
        && value.TryGetProperty("bytes", out var bytes) && bytes.ValueKind == JsonValueKind.Number && bytes.TryGetInt64(out var length)
        && value.TryGetProperty("type", out var type) && type.ValueKind == JsonValueKind.String
            ? new MediaFile(sha256.GetString()!, length, type.GetString()!)
            : null;
}
