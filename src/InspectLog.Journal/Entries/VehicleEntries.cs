using InspectLog.Measuring;

namespace InspectLog.Journal.Entries;

/// <summary>A vehicle came to the garage. Always the first entry of its journal.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Description">Year, body, what it is; may be empty.</param>
/// <param name="Engine">Engine layout; null while unknown.</param>
[EntryKind("vehicle-added")]
public sealed record VehicleAdded(string Name, string Description, EngineLayout? Engine) : EntryBody;

/// <summary>The vehicle is described anew, whole.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Description">Year, body, what it is; may be empty.</param>
/// <param name="Engine">Engine layout; null while unknown.</param>
[EntryKind("vehicle-described")]
public sealed record VehicleDescribed(string Name, string Description, EngineLayout? Engine) : EntryBody;

/// <summary>The vehicle's picture.</summary>
/// <param name="Media">The photo's file in the media store.</param>
[EntryKind("vehicle-pictured")]
public sealed record VehiclePictured(MediaFile Media) : EntryBody;

/// <summary>Private facts, in an entry of their own so that they can be withheld or erased by themselves.</summary>
/// <param name="Owner">Owner's name; may be empty.</param>
/// <param name="Contact">How to reach the owner; may be empty.</param>
/// <param name="Vin">Chassis or vehicle identification number; may be empty.</param>
[EntryKind("private-facts")]
public sealed record PrivateFactsNoted(string Owner, string Contact, string Vin) : EntryBody;

/// <summary>Limits of one check for this vehicle, in place of the sheet's.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Lower">Lower limit, base unit; null for none.</param>
/// <param name="Upper">Upper limit, base unit; null for none.</param>
/// <param name="Source">Where they come from, such as the maker's manual and page. Never empty.</param>
[EntryKind("limits-set")]
public sealed record LimitsSet(string Check, double? Lower, double? Upper, string Source) : EntryBody
{
    /// <summary>Id of the sheet whose check is meant; null in entries from before limits named it, which are for any sheet
    /// that has the check.</summary>
    public string? Sheet { get; init; }
}

/// <summary>The sheet's own limits apply again.</summary>
/// <param name="Check">Check id.</param>
[EntryKind("limits-cleared")]
public sealed record LimitsCleared(string Check) : EntryBody
{
    /// <summary>The sheet as the entry that set the limits named it; null where it named none.</summary>
    public string? Sheet { get; init; }
}

/// <summary>An instrument of the workshop. Written to the workshop's journal.</summary>
/// <param name="Instrument">The instrument; replaces an earlier one with the same id.</param>
[EntryKind("instrument-added")]
public sealed record InstrumentAdded(Instrument Instrument) : EntryBody;

/// <summary>An instrument is no longer in use. Written to the workshop's journal.</summary>
/// <param name="Id">Its id.</param>
[EntryKind("instrument-retired")]
public sealed record InstrumentRetired(string Id) : EntryBody;

/// <summary>The journal ended in a line that was not whole; its bytes were set aside.</summary>
/// <param name="File">Name of the file they were kept in.</param>
/// <param name="Bytes">How many bytes.</param>
[EntryKind("tail-set-aside")]
public sealed record TailSetAside(string File, long Bytes) : EntryBody;

/// <summary>The layout of an engine, as far as the ignition is concerned.</summary>
/// <param name="Cylinders">Number of cylinders.</param>
/// <param name="FiringOrder">Cylinder numbers in firing order; empty while unknown.</param>
/// <param name="Rotation">Which way the rotor turns, seen from above.</param>
public sealed record EngineLayout(int Cylinders, IReadOnlyList<int> FiringOrder, RotorRotation Rotation);

/// <summary>Which way a distributor rotor turns, seen from above.</summary>
public enum RotorRotation
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Clockwise.</summary>
    Clockwise,

    /// <summary>Anticlockwise.</summary>
    Anticlockwise,
}

/// <summary>A file in the media store.</summary>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hex; also its name.</param>
/// <param name="Bytes">Length in bytes.</param>
/// <param name="Type">Media type, such as <c>audio/wav</c> or <c>image/jpeg</c>.</param>
public sealed record MediaFile(string Sha256, long Bytes, string Type);
