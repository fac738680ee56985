using InspectLog.Journal.State;

namespace InspectLog.App.Media;

/// <summary>Where a photo is used.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Photo">The photo.</param>
public sealed record PhotoUse(VehicleState Vehicle, InspectionState Inspection, PhotoCapture Photo)
{
    /// <summary>The photos of a vehicle that count, those added after closing among them, inspection by inspection.</summary>
    public static IEnumerable<PhotoUse> In(VehicleState vehicle) =>
        from inspection in vehicle.Inspections
        where inspection.HasPhotos
        from photo in inspection.Everything.OfType<PhotoCapture>()
        where photo.History.Withdrawn is null
        select new PhotoUse(vehicle, inspection, photo);
}
