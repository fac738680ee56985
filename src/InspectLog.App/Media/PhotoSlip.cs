using System.Text.Json;
using System.Text.Json.Serialization;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>What was made of a photo. It lies beside the copies and holds each of them to their original: a copy whose
/// bytes do not have the SHA-256 that stands here was not made of this photo by this program.</summary>
/// <param name="Version">How copies and figures are made; see <see cref="Current"/>.</param>
/// <param name="Original">SHA-256 of the original, lower-case hex.</param>
public sealed record PhotoSlip(int Version, string Original)
{
    /// <summary>A change in how copies or figures are made counts it up, and what was made before is made anew.</summary>
    public const int Current = 2;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>SHA-256 of the display copy; null where there is none.</summary>
    public string? Display { get; init; }

    /// <summary>SHA-256 of the thumbnail; null where there is none.</summary>
    public string? Thumbnail { get; init; }

    /// <summary>SHA-256 of the copy for paper; null where none was asked for yet.</summary>
    public string? Print { get; init; }

    /// <summary>Why the photo cannot be shown; null where it can.</summary>
    public PhotoFault? Fault { get; init; }

    /// <summary>What is told of the photo; null where it cannot be shown.</summary>
    public PhotoFigures? Figures { get; init; }

    /// <summary>SHA-256 of a copy; null where there is none.</summary>
    public string? Of(CopyKind kind) => kind switch
    {
        CopyKind.Display => Display,
        CopyKind.Thumbnail => Thumbnail,
        _ => Print,
    };

    /// <summary>Reads a slip; null where the bytes are none of this version for this original.</summary>
    public static PhotoSlip? Read(ReadOnlySpan<byte> json, string original)
    {
        try
        {
            return JsonSerializer.Deserialize<PhotoSlip>(json, Json) is { Version: Current } slip && slip.Original == original ? slip : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>It as a file.</summary>
    public byte[] ToJson() => JsonSerializer.SerializeToUtf8Bytes(this, Json);
}

/// <summary>The copies there are of a photo.</summary>
public enum CopyKind
{
    /// <summary>For a screen.</summary>
    Display,

    /// <summary>Small, for lists.</summary>
    Thumbnail,

    /// <summary>For paper; made when asked for.</summary>
    Print,
}
