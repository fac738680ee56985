using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Importing;

/// <summary>Takes an archive into a garage, once all of it was checked.</summary>
/// <param name="garage">The garage.</param>
/// <param name="freeSpace">Bytes that are free on its disk.</param>
public sealed class ArchiveImport(Garage garage, Func<string, long> freeSpace)
{
    private const string Payload = "data/";
    private const long Margin = 64 * 1024 * 1024;

    /// <summary>Takes an archive in. Where it stops on the way, files may have been kept that nothing names yet; taken in again, it
    /// goes on.</summary>
    /// <param name="tree">The archive's files.</param>
    /// <param name="archive">What checking those very files gave: it is intact.</param>
    /// <param name="stop">Gives it up, before the journal is written.</param>
    /// <returns>The vehicle it belongs to now, and what became of it.</returns>
    /// <exception cref="ImportRefusedException">It cannot be taken in; nothing changed.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public (string VehicleId, ImportPlan Done) Run(IFileTree tree, ArchiveFacts archive, CancellationToken stop = default)
    {
        var plan = ImportPlan.Of(archive, garage);
        switch (plan)
        {
            case ImportPlan.Known(var vehicle, _):
                return (vehicle, plan);
            case ImportPlan.Parted parted:
                throw new ImportRefusedException(ImportWords.Of(parted, archive));
            default:
                ThrowIfTooLarge(tree);
                KeepFiles(tree, archive, stop);
                var written = Write(plan, archive);
                KeepSeals(written, archive.Seals);
                return (written, plan);
        }
    }

    private string Write(ImportPlan plan, ArchiveFacts archive)
    {
        // Of what is here all the same nothing is withheld.
        List<WithheldMedia> withheld = [.. archive.Withheld.Where(one => !garage.Media.Has(one.File.Sha256))];
        try
        {
            if (plan is not ImportPlan.Continues(var vehicle, _))
            {
                return garage.AddJournal(archive.VehicleId, archive.Journal, withheld);
            }

            garage.ContinueJournal(vehicle, archive.Journal, withheld);
            return vehicle;
        }
        catch (Exception meanwhile) when (meanwhile is FormatException or InvalidOperationException and not ObjectDisposedException)
        {
            throw new ImportRefusedException("Something was recorded of this vehicle at this moment, so nothing was taken in. Look at the archive again, and see what it would do now.");
        }
    }

    private void KeepFiles(IFileTree tree, ArchiveFacts archive, CancellationToken stop)
    {
        foreach (var pinned in archive.Sheets)
        {
            garage.Sheets.Keep(TreeReading.Whole(tree, Payload + ArchiveLayout.Sheet(pinned.SheetSha256)));
        }

        foreach (var file in archive.Named.Where(file => !archive.IsWithheld(file)))
        {
            stop.ThrowIfCancellationRequested();
            using var bytes = tree.Open(Payload + ArchiveLayout.Media(file));
            garage.Media.KeepFrom(bytes, file);
        }

        foreach (var (file, copy) in archive.Withheld)
        {
            if (copy is not null)
            {
                using var bytes = tree.Open(Payload + ArchiveLayout.Copy(file));
                garage.Media.KeepFrom(bytes, copy);
            }
        }
    }

    /// <summary>Keeps the seals that came, beside those that are here: they go on saying what they say of the journal. Of an
    /// archive that withholds something and is not sealed itself they would miss what was withheld, and are left there.
    /// </summary>
    private void KeepSeals(string vehicle, ArchiveSeals seals)
    {
        var folder = SealFolder.Of(garage.Folder, vehicle);
        var kept = seals.Own is null && seals.Chain.Withheld.Count > 0 ? [] : seals.Earlier.Append(seals.Own);
        foreach (var (signed, stamp) in kept.Where(one => one?.Sound is not null).Select(one => (one!.Sound!, one.Stamp)))
        {
            folder.Keep(signed);
            if (stamp is not null)
            {
                folder.Attach(signed.FileName, stamp);
            }
        }
    }

    /// <summary>A disk that fills up in the middle would close whatever is written to until the next start.</summary>
    private void ThrowIfTooLarge(IFileTree tree)
    {
        var needed = tree.Lengths.Values.Sum() + Margin;
        if (freeSpace(garage.Folder) is var free && free < needed)
        {
            throw new ImportRefusedException(FormattableString.Invariant(
                $"This archive needs {needed / 1_000_000} MB, and {free / 1_000_000} MB are free on the disk of the garage. Free some space and try again; nothing was taken in."));
        }
    }
}

/// <summary>An archive cannot be taken in: the message says why and what to do. Nothing changed.</summary>
public sealed class ImportRefusedException(string message) : Exception(message);
