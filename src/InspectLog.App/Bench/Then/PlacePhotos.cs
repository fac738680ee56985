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
        .. from inspection in vehicle.Inspections
           where inspection.HasPhotos && inspection.Find(photo.Sequence) is null
           from other in inspection.Everything.OfType<PhotoCapture>()
           where other.History.Withdrawn is null && (other.Photo.Check, other.Photo.Cylinder) == (photo.Photo.Check, photo.Photo.Cylinder)
           orderby other.Time descending
           select new PhotoUse(vehicle, inspection, other),
    ];
}
