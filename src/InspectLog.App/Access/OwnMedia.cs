using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.App.Access;

/// <summary>Which recordings and photos belong to a vehicle, or to one inspection of it.</summary>
public static class OwnMedia
{
    /// <summary>Whether a file is named by an entry of the vehicle, and of the inspection where one is given. Of an
    /// inspection only the photos count: its report plays no recordings.</summary>
    public static bool Hold(Garage garage, string vehicle, long? inspection, string sha256) =>
        garage.FindVehicle(vehicle) is { } state && state.Naming(sha256).Any(naming => garage.Entries(vehicle).At(naming)?.Body switch
        {
            RecordingKept kept => inspection is null && kept.Media.Sha256 == sha256,
            PhotoKept kept => (inspection ?? kept.Inspection) == kept.Inspection && kept.Media.Sha256 == sha256,
            VehiclePictured pictured => pictured.Media.Sha256 == sha256,
            _ => false,
        });
}
