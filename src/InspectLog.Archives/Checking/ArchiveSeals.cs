using InspectLog.Journal.Sealing;

namespace InspectLog.Archives.Checking;

/// <summary>The seals an archive brings, held against the journal and the manifest in it. No key is needed for that. Pure.</summary>
/// <param name="Own">The seal of the archive itself; null where it has none.</param>
/// <param name="Earlier">The seals that the journal had before.</param>
/// <param name="Chain">The journal in the archive.</param>
/// <param name="Manifest">SHA-256 of the manifest of its payload, lower-case hex; empty where there is none.</param>
public sealed record ArchiveSeals(KeptSeal? Own, IReadOnlyList<KeptSeal> Earlier, JournalChain Chain, string Manifest)
{
    /// <summary>Pieces of the seal, laid out for other tools, that are not those of the seal.</summary>
    public IReadOnlyList<string> Strays { get; init; } = [];

    /// <summary>What all the seals say of the journal.</summary>
    public SealsReport Report { get; } = SealsReport.Of([.. Earlier, .. Own is null ? [] : new[] { Own }], Chain, vehicleId: null);

    /// <summary>What is wrong with them, each in a sentence; none where all they stand for is there. That there are none is
    /// nothing wrong.</summary>
    /// <param name="key">The fingerprint of the key that is trusted, or its beginning; null where none was given.</param>
    public IReadOnlyList<string> Faults(string? key = null) => Own is { } own
        ? [.. SealBundle.Faults(own, Earlier, Chain, Manifest, key), .. Strays.Select(path => $"{path} does not say what the seal in {SealBundle.Jws} says.")]
        : [.. SealWords.Faults(WithWhatIsWithheld(), key)];

    /// <summary>What the seals say that is nothing wrong, in sentences for people.</summary>
    public IEnumerable<string> Told()
    {
        if (Own is null)
        {
            yield return Earlier.Count == 0
                ? "Not sealed: by itself this archive does not show whether it was made anew from its beginning or cut at its end. Compare the hash of the last entry, or the head of the record, with a printed report."
                : "The archive itself is not sealed, so that its reports and tables are not; the journal in it is, as far as its seals go.";
        }

        if (Own is null && Report.Newest() is { Comparison.WithheldSince: { Count: > 0 } withheld })
        {
            yield return $"Withheld since the newest seal, as the archive says of itself: {SealWords.Numbers(withheld)}.";
        }
    }

    /// <summary>What an archive withholds it says of itself; without a seal of its own, nothing it was held against says
    /// otherwise.</summary>
    private SealsReport WithWhatIsWithheld() => Report with
    {
        Seals = [.. Report.Seals.Select(one => one with { Comparison = one.Comparison is { } found ? found with { WithheldSince = [] } : null })],
    };
}
