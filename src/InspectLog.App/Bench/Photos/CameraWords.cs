using System.Globalization;
using InspectLog.Photos;

namespace InspectLog.App.Bench.Photos;

/// <summary>When and by what a photo was taken, as its camera wrote it, in words. Pure.</summary>
public static class CameraWords
{
    /// <summary>Sending takes a while, and clocks differ by seconds.</summary>
    private static readonly TimeSpan Alike = TimeSpan.FromMinutes(2);

    /// <summary>"3 May 2025, 14:07:09 by the camera's own clock".</summary>
    public static string Taken(DateTime taken) =>
        $"{taken.ToString("d MMMM yyyy, HH:mm:ss", CultureInfo.InvariantCulture)} by the camera's own clock";

    /// <summary>How the camera's clock differs from the one by which the photo was kept. A camera that does not say its offset
    /// from UTC is taken to show the workshop's time.</summary>
    /// <param name="camera">What the camera wrote.</param>
    /// <param name="kept">When the photo was kept, in the workshop's time.</param>
    public static string? Skew(CameraFacts camera, DateTimeOffset kept)
    {
        if (camera.Taken is not { } taken)
        {
            return null;
        }

        var late = kept - Instant(taken, camera.Offset ?? kept.Offset);
        return late.Duration() < Alike ? "the same as this computer's clock, to the minute or two that sending takes"
            : late > TimeSpan.Zero ? $"{Length(late)} before it was kept by this computer's clock: it was taken earlier, or the camera's clock is behind"
            : $"{Length(late.Negate())} after it was kept by this computer's clock: the camera's clock is ahead";
    }

    /// <summary>"1/125 s, f/1.8, ISO 400, 4.2 mm"; null where the camera says nothing of it.</summary>
    public static string? Exposure(CameraFacts camera)
    {
        var parts = new[]
        {
            camera.Exposure is { } seconds ? Seconds(seconds) : null,
            camera.Aperture is { } aperture ? Invariant($"f/{aperture:0.#}") : null,
            camera.Sensitivity is { } iso ? Invariant($"ISO {iso}") : null,
            camera.FocalLength is { } length ? Invariant($"{length:0.#} mm") : null,
        };
        return parts.OfType<string>().Any() ? string.Join(", ", parts.OfType<string>()) : null;
    }

    /// <summary>"Pinhole Works P2, 4 mm lens"; null where the camera says nothing of it.</summary>
    public static string? Camera(CameraFacts camera)
    {
        var model = camera is { Maker: { } maker, Model: { } named } && !named.StartsWith(maker, StringComparison.OrdinalIgnoreCase)
            ? $"{maker} {named}"
            : camera.Model ?? camera.Maker;
        var parts = new[] { model, camera.Lens }.OfType<string>().ToList();
        return parts.Count == 0 ? null : string.Join(", ", parts);
    }

    private static DateTimeOffset Instant(DateTime taken, TimeSpan offset) =>
        // The first and last days of the calendar cannot be moved any further.
        taken.Year is > 1 and < 9999 ? new(DateTime.SpecifyKind(taken, DateTimeKind.Unspecified), offset) : new(taken, TimeSpan.Zero);

    private static string Seconds(double seconds) => seconds < 0.5 ? Invariant($"1/{Math.Round(1 / seconds)} s") : Invariant($"{seconds:0.#} s");

    private static string Length(TimeSpan time) => time switch
    {
        { TotalDays: >= 2 } => Invariant($"{Math.Floor(time.TotalDays)} days"),
        { TotalHours: >= 1 } => Invariant($"{Math.Floor(time.TotalHours)} h {time.Minutes} min"),
        _ => Invariant($"{time.Minutes} min"),
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
