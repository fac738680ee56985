using InspectLog.Journal.Noted;

namespace InspectLog.Journal;

/// <summary>Something wrong with the garage.</summary>
/// <param name="ReadOnly">Whether nothing can be written because of it, to the garage as a whole or to the one journal or part
/// it concerns.</param>
/// <param name="Message">What it is and what to do.</param>
public sealed record GarageProblem(bool ReadOnly, string Message)
{
    /// <summary>The vehicle it concerns; null when it concerns the garage as a whole or the workshop's journal.</summary>
    public string? VehicleId { get; init; }

    /// <summary>Whether it concerns the workshop's own journal.</summary>
    public bool IsOfWorkshop { get; init; }

    /// <summary>Whether it concerns one thing of the garage that is neither a vehicle nor the workshop's journal: the
    /// recordings and photos, the check sheets, or the adding of vehicles.</summary>
    public bool IsOfOnePart { get; init; }

    /// <summary>Whether a write failed, so that nothing more is written there until the next start. What is recorded is
    /// sound.</summary>
    public bool IsFailedWrite { get; init; }

    /// <summary>What a journal lacks of what was noted of it, where that is the problem; null otherwise.</summary>
    public JournalLoss? Loss { get; init; }

    /// <summary>Whether nothing at all can be written because of it.</summary>
    public bool ClosesGarage => ReadOnly && VehicleId is null && !IsOfWorkshop && !IsOfOnePart;
}

/// <summary>Nothing can be written at present.</summary>
public sealed class JournalReadOnlyException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>Another process has the data folder open.</summary>
public sealed class DataFolderInUseException(string message, Exception? inner = null) : IOException(message, inner);

/// <summary>There is no vehicle with this id.</summary>
public sealed class UnknownVehicleException(string vehicleId)
    : Exception($"There is no vehicle \"{vehicleId}\" in this garage.");
