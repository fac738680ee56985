namespace InspectLog.Journal;

/// <summary>Something wrong with the garage.</summary>
/// <param name="ReadOnly">Whether nothing can be written because of it.</param>
/// <param name="Message">What it is and what to do.</param>
public sealed record GarageProblem(bool ReadOnly, string Message)
{
    /// <summary>The vehicle it concerns; null when it concerns the garage as a whole or the workshop's journal.</summary>
    public string? VehicleId { get; init; }
}

/// <summary>Nothing can be written at present.</summary>
public sealed class JournalReadOnlyException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>Another process has the data folder open.</summary>
public sealed class DataFolderInUseException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>There is no vehicle with this id.</summary>
public sealed class UnknownVehicleException(string vehicleId)
    : Exception($"There is no vehicle \"{vehicleId}\" in this garage.");
