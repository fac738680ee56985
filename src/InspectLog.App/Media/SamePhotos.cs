using System.Collections.Concurrent;
using InspectLog.Journal;
using InspectLog.Journal.State;
using InspectLog.Photos.Likeness;

namespace InspectLog.App.Media;

/// <summary>Finds where else a photo is used: the same file, known by its SHA-256, or a copy of the same picture, known by the
/// fingerprints on the slips. What has no slip yet, because nobody looked at it since the program changed, is found by its
/// bytes alone. Safe for use by many threads.</summary>
/// <param name="garage">The garage.</param>
/// <param name="copies">The slips.</param>
public sealed class SamePhotos(Garage garage, PhotoCopies copies)
{
    private readonly ConcurrentDictionary<string, ulong> _coarse = new();
    private readonly ConcurrentDictionary<(string, string), bool> _compared = new();

    /// <summary>The other photos that count and are the same file or picture, the same file first, then the newest.</summary>
    /// <param name="vehicleId">The photo's vehicle.</param>
    /// <param name="photo">The photo.</param>
    /// <param name="only">The one vehicle to look through; null for all.</param>
    public IReadOnlyList<PhotoUse> Of(string vehicleId, PhotoCapture photo, string? only)
    {
        var sha256 = photo.Photo.Media.Sha256;
        return
        [
            .. garage.Vehicles()
                .Where(one => only is null || one.Id == only)
                .Select(one => garage.FindVehicle(one.Id))
                .OfType<VehicleState>()
                .SelectMany(PhotoUse.In)
                .Where(use => (use.Vehicle.Id, use.Photo.Sequence) != (vehicleId, photo.Sequence))
                .Where(use => use.Photo.Photo.Media.Sha256 == sha256 || AreCopies(sha256, use.Photo.Photo.Media.Sha256))
                .OrderBy(use => use.Photo.Photo.Media.Sha256 == sha256 ? 0 : 1)
                .ThenByDescending(use => use.Photo.Time),
        ];
    }

    private bool AreCopies(string one, string other)
    {
        if (CoarseOf(one) is not { } first || CoarseOf(other) is not { } second || !SamePicture.MayBe(first, second))
        {
            return false;
        }

        var pair = string.CompareOrdinal(one, other) < 0 ? (one, other) : (other, one);
        return _compared.GetOrAdd(pair, _ => Print(one) is { } a && Print(other) is { } b && SamePicture.Is(a, b));
    }

    private ulong? CoarseOf(string sha256)
    {
        if (_coarse.TryGetValue(sha256, out var known))
        {
            return known;
        }

        return Print(sha256) is { } print ? _coarse.GetOrAdd(sha256, print.Coarse) : null;
    }

    private PhotoFingerprint? Print(string sha256) => copies.SlipOf(sha256)?.Figures?.Fingerprint;
}
