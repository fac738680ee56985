using InspectLog.Archives.BagIt;
using InspectLog.Archives.Zip;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Archives.Checking;

/// <summary>Checks an archive by itself: the bag, its journal, and whether each file is one the journal names. Nothing is
/// written, and nothing of it is believed before it is checked.</summary>
/// <param name="sheetFault">Why bytes are no check sheet, in a clause; null where they are one.</param>
public sealed class ArchiveCheck(Func<ReadOnlyMemory<byte>, string?> sheetFault)
{
    private const string Payload = "data/";
    private const int LargestSheet = 4 * 1024 * 1024;

    /// <summary>Longest journal read, bytes: it is held in memory.</summary>
    public const int LargestJournal = 1 << 30;

    /// <summary>Checks what a folder or a ZIP holds.</summary>
    /// <param name="tree">Its files.</param>
    /// <param name="read">Is told how many bytes have been read.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public CheckedArchive Check(IFileTree tree, IProgress<long>? read = null, CancellationToken stop = default)
    {
        var bag = BagCheck.Read(tree, read, stop);
        List<BagFault> faults = [.. bag.Faults, .. Spelling.Faults(tree, bag), .. FaultsOfInfo(tree, bag)];
        if (Facts(tree, bag, faults) is not { } facts)
        {
            return new(faults, null);
        }

        faults.AddRange(ArchivePayload.Faults(facts, bag));
        faults.AddRange(facts.Sheets.SelectMany(pinned => FaultOfSheet(tree, pinned)));
        return new([.. faults.Distinct()], facts with { Seals = SealsReading.Of(tree, bag, facts) });
    }

    /// <summary>What is wrong with the bytes around the files of a ZIP; null where nothing is, or where it is no ZIP. The files
    /// themselves may all be sound.</summary>
    /// <param name="tree">Its files.</param>
    /// <param name="bag">The bag's description of itself.</param>
    public static BagFault? FaultOfContainer(IFileTree tree, BagInfo bag)
    {
        if (tree is not ZipTree zip)
        {
            return null;
        }

        var day = DateOnly.TryParseExact(bag["Bagging-Date"], "yyyy-MM-dd", out var made) ? made : default;
        return ZipStrictness.Difference(zip.File, new(day), zip.Listed) is { } where
            ? new("", $"is not spelled the way InspectLog writes a ZIP (first at {where}). The files in it were each looked at. If you packed it anew yourself, unpack it and verify the folder; otherwise it was changed")
            : null;
    }

    private static IEnumerable<BagFault> FaultsOfInfo(IFileTree tree, BagReading bag)
    {
        if (!tree.Lengths.ContainsKey(BagInfo.FileName))
        {
            yield return new(BagInfo.FileName, "is missing, so this is no archive of InspectLog");
        }
        else if (bag.Info is { } info && info[ArchiveFields.Version] is var version && version != ArchiveLayout.Version)
        {
            yield return version is null
                ? new(BagInfo.FileName, "does not say that this is an archive of InspectLog")
                : new(BagInfo.FileName, $"says version {version[..Math.Min(version.Length, 20)]} of the archive, which is not known here. Look for a newer InspectLog");
        }
    }

    private static ArchiveFacts? Facts(IFileTree tree, BagReading bag, List<BagFault> faults)
    {
        const string path = Payload + ArchiveLayout.Journal;
        if (!tree.Lengths.TryGetValue(path, out var length))
        {
            faults.Add(new(path, "is missing, so there is no journal"));
            return null;
        }

        if (bag.Info is not { } info || !bag.Sums.ContainsKey(path))
        {
            return null;
        }

        if (length > LargestJournal)
        {
            faults.Add(new(path, "is larger than any journal that can be read here"));
            return null;
        }

        var journal = TreeReading.Whole(tree, path);
        return Read(journal, faults) is { } read
            ? new(read.Vehicle, read.Journal.Entries, journal, info, Withheld(tree, faults))
            : null;
    }

    private static (VehicleState Vehicle, JournalContents Journal)? Read(byte[] bytes, List<BagFault> faults)
    {
        const string path = Payload + ArchiveLayout.Journal;
        var journal = JournalLines.Read(bytes);
        if (journal.Broken is { } broken)
        {
            faults.Add(new(path, $"is not sound at line {broken.Line}: {broken.Reason}"));
            return null;
        }

        if (journal.Entries.IsEmpty || journal.Entries[0].Kind != "vehicle-added")
        {
            faults.Add(new(path, "is no vehicle's journal: it does not begin with a vehicle"));
            return null;
        }

        try
        {
            return (journal.Entries.Aggregate(VehicleState.Before("archive"), (state, entry) => state.Apply(entry)), journal);
        }
        catch (Exception impossible) when (impossible is ArgumentException or InvalidOperationException or OverflowException)
        {
            faults.Add(new(path, "says something that cannot be: its hashes are good, and what it says cannot be read as a record"));
            return null;
        }
    }

    private static IReadOnlyList<WithheldMedia> Withheld(IFileTree tree, List<BagFault> faults)
    {
        const string path = Payload + ArchiveLayout.Withheld;
        if (!tree.Lengths.ContainsKey(path))
        {
            return [];
        }

        try
        {
            return WithheldMediaList.Read(TreeReading.TryWhole(tree, path));
        }
        catch (FormatException damage)
        {
            faults.Add(new(path, $"cannot be read: {damage.Message}"));
            return [];
        }
    }

    private IEnumerable<BagFault> FaultOfSheet(IFileTree tree, InspectionStarted pinned)
    {
        var path = Payload + ArchiveLayout.Sheet(pinned.SheetSha256);
        if (!tree.Lengths.TryGetValue(path, out var length))
        {
            yield break; // told as missing
        }

        if (length > LargestSheet)
        {
            yield return new(path, "is larger than any check sheet");
        }
        else if (TreeReading.TryWhole(tree, path) is { } bytes && sheetFault(bytes) is { } fault)
        {
            yield return new(path, $"is no check sheet that can be used: {fault}");
        }
    }
}
