using InspectLog.Journal;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Seals;

/// <summary>The seals of the garage that is open, and their key.</summary>
public sealed class WorkshopSeals(Garage garage, TimeProvider time)
{
    /// <summary>Where the key is kept.</summary>
    public SealKeyFile Keys { get; } = new(garage.Folder);

    /// <summary>Seals the record of a vehicle as it is now. The first seal makes the key.</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="passphrase">What the key is kept under, or is to be kept under; empty for none.</param>
    /// <returns>Why it was not sealed, in a sentence; null where it was.</returns>
    public string? Seal(string vehicleId, string passphrase)
    {
        try
        {
            using var key = Keys.ReadOrMake(passphrase.Length == 0 ? null : passphrase);
            new Sealer(time, ProgramName.WithVersion).Seal(SealFolder.Of(garage.Folder, vehicleId), vehicleId, Chain(vehicleId), key);
            return null;
        }
        catch (Exception problem) when (problem is SealKeyException or SealRefusedException)
        {
            return problem.Message;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return $"The seal could not be written: {problem.Message}. The record itself is kept. Make room on the disk, or look at the rights of the data folder, and try again.";
        }
    }

    /// <summary>How the record of a vehicle is sealed now.</summary>
    public SealedState Of(string vehicleId) => SealedState.Of(garage.Folder, vehicleId, Chain(vehicleId));

    private JournalChain Chain(string vehicleId)
    {
        var isDamaged = garage.Problems.Any(problem => problem is { ReadOnly: true, IsFailedWrite: false } && problem.VehicleId == vehicleId);
        var entries = garage.Entries(vehicleId); // what is appended meanwhile is in the state alone, and is not withheld
        return JournalChain.Of(garage.FindVehicle(vehicleId)!, entries, isDamaged);
    }
}

/// <summary>How the record of a vehicle is sealed.</summary>
/// <param name="Seal">The newest seal that the record keeps; null where it is not sealed.</param>
/// <param name="Later">How many entries came after it.</param>
/// <param name="Printed">What a printed page says of it, and its QR code.</param>
/// <param name="Faults">What is wrong, each in a sentence.</param>
public sealed record SealedState(SignedSeal? Seal, long Later, PrintedSeal Printed, IReadOnlyList<string> Faults)
{
    /// <summary>The head of the record as it is now; of a damaged journal that of what can be read.</summary>
    public string Record { get; init; } = "";

    /// <summary>Whether lines of the journal are damaged.</summary>
    public bool IsDamaged { get; init; }

    /// <summary>How a vehicle's record is sealed.</summary>
    /// <param name="dataFolder">The data folder, in which the seals are.</param>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="chain">Its record as it is now.</param>
    /// <exception cref="IOException">The seals cannot be read.</exception>
    public static SealedState Of(string dataFolder, string vehicleId, JournalChain chain)
    {
        var report = SealsReport.Of(SealFolder.Of(dataFolder, vehicleId).Read(), chain, vehicleId);
        var newest = report.Seals.LastOrDefault(one => one.Comparison is { Stands: true });
        return new(
            newest?.Kept.Sound,
            newest?.Comparison?.Later ?? 0,
            newest?.Kept.Sound is { } seal
                ? PrintedSeal.Of(seal)
                : new(vehicleId, chain.Count, chain.Record, Key: null),
            [.. SealWords.Faults(report, key: null)])
        {
            Record = chain.Record,
            IsDamaged = chain.IsDamaged,
        };
    }
}
