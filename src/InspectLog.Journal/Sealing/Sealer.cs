namespace InspectLog.Journal.Sealing;

/// <summary>Makes seals.</summary>
/// <param name="time">The clock.</param>
/// <param name="program">The program and its version, as seals name it.</param>
public sealed class Sealer(TimeProvider time, string program)
{
    /// <summary>Seals a journal as it is, and keeps the seal: when this returns it is on disk. Where the newest seal already
    /// says just that, by the same key, it is given and no other made.</summary>
    /// <param name="folder">Where the vehicle's seals are.</param>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="chain">Its journal.</param>
    /// <param name="key">The key.</param>
    /// <exception cref="SealRefusedException">The journal is damaged or empty, or is not what was sealed before.</exception>
    /// <exception cref="IOException">The seal could not be written.</exception>
    public SignedSeal Seal(SealFolder folder, string vehicleId, JournalChain chain, SealKey key)
    {
        var before = Earlier(folder.Read(), chain, vehicleId);
        if (before is { Key: var by, Seal: var last } && by.Fingerprint == key.Public.Fingerprint && last.Record == Of(vehicleId, chain).Record)
        {
            return before;
        }

        var seal = SignedSeal.Sign(Of(vehicleId, chain) with { Earlier = AsEarlier(before) }, key);
        folder.Keep(seal);
        return seal;
    }

    /// <summary>Seals an archive: its journal, as it is in there, and by the manifest every file. The seal is not kept here.
    /// </summary>
    /// <param name="kept">The seals that the vehicle has.</param>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="chain">The journal as it is in the archive, with all that is withheld there.</param>
    /// <param name="manifest">SHA-256 of the archive's <c>manifest-sha256.txt</c>, lower-case hex.</param>
    /// <param name="key">The key.</param>
    /// <exception cref="SealRefusedException">The journal is damaged or empty, or is not what was sealed before.</exception>
    public SignedSeal SealArchive(IEnumerable<KeptSeal> kept, string vehicleId, JournalChain chain, string manifest, SealKey key) =>
        SignedSeal.Sign(Of(vehicleId, chain) with { Earlier = AsEarlier(Earlier(kept, chain, vehicleId)), Manifest = manifest }, key);

    private static EarlierSeal? AsEarlier(SignedSeal? before) => before is null ? null : new(before.Seal.Count, before.Seal.Head);

    /// <summary>The newest seal, after all of them were held against the journal: what was cut or written anew since is not
    /// sealed over.</summary>
    private static SignedSeal? Earlier(IEnumerable<KeptSeal> kept, JournalChain chain, string vehicleId)
    {
        if (chain.IsDamaged || chain.Count == 0)
        {
            throw new SealRefusedException("The journal is damaged or empty, and is not sealed. Put it back from a copy first.");
        }

        var report = SealsReport.Of(kept, chain, vehicleId);
        return report.Seals.FirstOrDefault(one => one.Comparison is { Stands: false }) is { Kept.Sound.Seal: var seal, Comparison: { } comparison }
            ? throw new SealRefusedException($"Not sealed. {SealWords.Broken(seal, comparison)} Put the journal back from a copy first.")
            : report.Newest()?.Kept.Sound;
    }

    private Seal Of(string vehicleId, JournalChain chain)
    {
        var now = time.GetUtcNow();
        return new(
            vehicleId, chain.HashOf(1)!, chain.Count, chain.HashOf(chain.Count)!, chain.Withheld,
            now.AddTicks(-(now.Ticks % TimeSpan.TicksPerSecond)), program);
    }
}

/// <summary>A journal is not sealed; the message says why and what to do.</summary>
public sealed class SealRefusedException(string message) : Exception(message);
