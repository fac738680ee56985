using InspectLog.Archives.BagIt;
using InspectLog.Journal.Sealing;

namespace InspectLog.Archives.Making;

/// <summary>What an archive is sealed with.</summary>
/// <param name="Sealer">Makes the seal.</param>
/// <param name="Key">The workshop's key.</param>
public sealed record ArchiveSealing(Sealer Sealer, SealKey Key);

/// <summary>Lays the vehicle's seals into an archive, and where there is a key the seal of the archive itself.</summary>
internal static class SealedBag
{
    /// <summary>Adds them: the manifest of the payload is written and does not change any more.</summary>
    /// <param name="bag">The bag.</param>
    /// <param name="contents">What is in it.</param>
    /// <param name="manifest">SHA-256 of the manifest of its payload, lower-case hex.</param>
    /// <param name="sealing">What it is sealed with; null where it is not.</param>
    public static async Task AddAsync(BagWriter bag, ArchiveContents contents, string manifest, ArchiveSealing? sealing)
    {
        foreach (var file in Files(contents, manifest, sealing))
        {
            await bag.AddTagAsync(file.Path, file.Bytes).ConfigureAwait(false);
        }
    }

    /// <summary>Refuses a journal that is not what was sealed before: the archive would not be intact.</summary>
    /// <exception cref="ArchiveRefusedException">It is not.</exception>
    public static void ThrowIfNotKept(ArchiveContents contents)
    {
        var report = SealsReport.Of(contents.Seals, JournalChain.Of(contents.Entries), contents.Source.Id);
        if (report.Seals.FirstOrDefault(one => one.Comparison is { Stands: false }) is { Kept.Sound.Seal: var seal, Comparison: { } comparison })
        {
            throw new ArchiveRefusedException($"{SealWords.Broken(seal, comparison)} An archive of it would not be intact. Put the journal back from a copy first.");
        }
    }

    private static IReadOnlyList<BundledFile> Files(ArchiveContents contents, string manifest, ArchiveSealing? sealing)
    {
        if (sealing is null)
        {
            return SealBundle.OfUnsealed(contents.Seals);
        }

        var chain = JournalChain.Of(contents.Entries);
        return SealBundle.Of(sealing.Sealer.SealArchive(contents.Seals, contents.Source.Id, chain, manifest, sealing.Key), contents.Seals);
    }
}
