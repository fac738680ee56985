using InspectLog.App.Media;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Then;

/// <summary>The photos of one place over the years. Pure.</summary>
public static class PlacePhotos
{
    /// <summary>Those of other inspections that are filed where this photo is and count, the newest first.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="photo">The photo at hand.</param>
    public static IReadOnlyList<PhotoUse> Of(VehicleState vehicle, PhotoCapture photo) =>
    [
        .. PhotoUse.In(vehicle)
            .Where(use => use.Inspection.Find(photo.Sequence) is null
                && (use.Photo.Photo.Check, use.Photo.Photo.Cylinder) == (photo.Photo.Check, photo.Photo.Cylinder))
            .OrderByDescending(use => use.Photo.Time),
    ];
}
