namespace InspectLog.Journal.Index;

/// <summary>A vehicle as the garage page lists it.</summary>
/// <param name="Id">Vehicle id.</param>
/// <param name="Name">Name.</param>
/// <param name="Description">Description; may be empty.</param>
/// <param name="PictureSha256">Its picture; null when there is none.</param>
/// <param name="LastChanged">Time of the journal's last entry, UTC.</param>
public sealed record VehicleSummary(
    string Id, string Name, string Description, string? PictureSha256, DateTimeOffset LastChanged);

/// <summary>An entry that holds the words looked for.</summary>
/// <param name="VehicleId">Vehicle.</param>
/// <param name="VehicleName">Its name.</param>
/// <param name="Inspection">Inspection it belongs to; null when none.</param>
/// <param name="Sequence">The entry.</param>
/// <param name="Time">When, UTC.</param>
/// <param name="Text">The text that holds them.</param>
public sealed record SearchHit(
    string VehicleId, string VehicleName, long? Inspection, long Sequence, DateTimeOffset Time, string Text);

/// <summary>A recording without a transcript.</summary>
/// <param name="VehicleId">Vehicle.</param>
/// <param name="Recording">Sequence of its entry.</param>
/// <param name="Inspection">Its inspection.</param>
/// <param name="Kept">When it was kept or last asked for, UTC.</param>
public sealed record WaitingRecording(string VehicleId, long Recording, long Inspection, DateTimeOffset Kept);
