namespace InspectLog.Photos;

/// <summary>What the camera wrote into a photo (EXIF 2.32, CIPA DC-008), as far as it says when and by what it was taken. The
/// place and serial numbers are left in the original.</summary>
public sealed record CameraFacts
{
    /// <summary>When it was taken by the camera's own clock, local time as written (DateTimeOriginal, else DateTimeDigitized).
    /// The clock can be wrong.</summary>
    public DateTime? Taken { get; init; }

    /// <summary>The offset of that clock from UTC (OffsetTimeOriginal); null where the camera does not say.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Maker of the camera.</summary>
    public string? Maker { get; init; }

    /// <summary>Model of the camera.</summary>
    public string? Model { get; init; }

    /// <summary>The lens.</summary>
    public string? Lens { get; init; }

    /// <summary>Exposure time, seconds.</summary>
    public double? Exposure { get; init; }

    /// <summary>Aperture, as focal length by diameter.</summary>
    public double? Aperture { get; init; }

    /// <summary>Sensitivity, ISO 12232.</summary>
    public int? Sensitivity { get; init; }

    /// <summary>Focal length, mm.</summary>
    public double? FocalLength { get; init; }
}
