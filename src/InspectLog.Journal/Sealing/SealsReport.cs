namespace InspectLog.Journal.Sealing;

/// <summary>A seal, and what the journal is to it.</summary>
/// <param name="Kept">The seal as it was found.</param>
/// <param name="Comparison">What came of holding it against the journal; null where it cannot be read.</param>
public sealed record CheckedSeal(KeptSeal Kept, SealComparison? Comparison);

/// <summary>What the seals of a journal say about it. Pure.</summary>
/// <param name="Seals">The seals, the newest last.</param>
/// <param name="VehicleId">The vehicle as it is called here; null where that is not known.</param>
public sealed record SealsReport(IReadOnlyList<CheckedSeal> Seals, string? VehicleId)
{
    /// <summary>A journal that nothing seals.</summary>
    public static readonly SealsReport None = new([], null);

    /// <summary>Holds seals against a journal. Of seals of as many entries, the one that withholds what the journal does counts
    /// as the newest: clocks get set back.</summary>
    /// <param name="seals">The seals.</param>
    /// <param name="chain">The journal.</param>
    /// <param name="vehicleId">The vehicle as it is called here; null where that is not known.</param>
    public static SealsReport Of(IEnumerable<KeptSeal> seals, JournalChain chain, string? vehicleId) => new(
    [
        .. KeptSeal.InOrder(seals).Select(one => new CheckedSeal(one, one.Sound is { } signed ? SealComparison.Of(signed.Seal, chain) : null))
            .OrderBy(one => one.Kept.Sound?.Seal.Count ?? 0)
            .ThenByDescending(one => one.Comparison is { } found ? found.WithheldSince.Count + found.GivenBack.Count : 0),
    ],
    vehicleId);

    /// <summary>The fingerprints of the keys the seals were made with, each once.</summary>
    public IReadOnlyList<string> Keys => [.. Seals.Select(one => one.Kept.Sound?.Key.Fingerprint).OfType<string>().Distinct()];

    /// <summary>The newest seal that can be read, of one key or of any; null where there is none.</summary>
    /// <param name="key">The fingerprint, or its beginning; null for any key.</param>
    public CheckedSeal? Newest(string? key = null) =>
        Seals.LastOrDefault(one => one.Kept.Sound is { } signed && (key is null || KeyFingerprint.Is(signed.Key, key)));

    /// <summary>Whether everything the seals stand for is there and nothing was withheld since the newest of them.</summary>
    /// <param name="key">The fingerprint of the key that is trusted, or its beginning; null where none was given.</param>
    public bool IsIntact(string? key = null) => !SealWords.Faults(this, key).Any();

    /// <summary>Earlier seals that later ones name and that are not here any more.</summary>
    public IReadOnlyList<EarlierSeal> Missing =>
    [
        .. Seals.Select(one => one.Kept.Sound?.Seal.Earlier).OfType<EarlierSeal>().Distinct()
            .Where(earlier => !Seals.Any(one => one.Kept.Sound?.Seal is { } seal && seal.Count == earlier.Count && seal.Head == earlier.Head)),
    ];

    /// <summary>Whether a seal is of the vehicle as it is called here. An archive that came in where the name was taken
    /// got a number after it.</summary>
    internal bool IsOfVehicle(Seal seal) => VehicleId is null || VehicleId == seal.Vehicle
        || (VehicleId.StartsWith(seal.Vehicle + "-", StringComparison.Ordinal) && VehicleId[(seal.Vehicle.Length + 1)..].All(char.IsAsciiDigit));
}
