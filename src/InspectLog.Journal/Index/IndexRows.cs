using InspectLog.Journal.State;

namespace InspectLog.Journal.Index;

/// <summary>A vehicle as the garage page lists it.</summary>
/// <param name="Id">Vehicle id.</param>
/// <param name="Name">Name.</param>
/// <param name="Description">Description; may be empty.</param>
/// <param name="PictureSha256">Its picture; null when there is none.</param>
/// <param name="LastChanged">Time of the journal's last entry, UTC; null when nothing of it can be read.</param>
public sealed record VehicleSummary(
    string Id, string Name, string Description, string? PictureSha256, DateTimeOffset? LastChanged);

/// <summary>An entry that holds the words looked for.</summary>
/// <param name="VehicleId">Vehicle.</param>
/// <param name="VehicleName">Its name.</param>
/// <param name="Inspection">Inspection it belongs to; null when none.</param>
/// <param name="Sequence">The entry.</param>
/// <param name="Time">When, UTC.</param>
/// <param name="Actor">Who made it.</param>
/// <param name="Text">What it says. The words looked for may stand elsewhere: in the name of who made it, or in a value as
/// it was typed.</param>
/// <param name="Mark">Why it no longer counts as it stands; null where it does.</param>
public sealed record SearchHit(
    string VehicleId,
    string VehicleName,
    long? Inspection,
    long Sequence,
    DateTimeOffset Time,
    string Actor,
    string Text,
    EntryMark? Mark);

/// <summary>A recording without a transcript.</summary>
/// <param name="VehicleId">Vehicle.</param>
/// <param name="Recording">Sequence of its entry.</param>
/// <param name="Inspection">Its inspection.</param>
/// <param name="Kept">When it was kept or last asked for, UTC.</param>
public sealed record WaitingRecording(string VehicleId, long Recording, long Inspection, DateTimeOffset Kept);
