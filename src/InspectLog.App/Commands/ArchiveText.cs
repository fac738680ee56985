using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;

namespace InspectLog.App.Commands;

/// <summary>What checking an archive found, as text for people.</summary>
internal static class ArchiveText
{
    public static void WriteFaults(this TextWriter output, string path, IReadOnlyList<BagFault> faults)
    {
        output.WriteLine($"{path}: NOT INTACT");
        foreach (var fault in faults)
            output.WriteLine($"  {(fault.Path.Length > 0 ? fault.Path : "The archive")} {fault.Words}.");
    }

    public static void WriteArchive(this TextWriter output, string path, IReadOnlyList<BagFault> faults, ArchiveFacts? facts)
    {
        if (faults.Count > 0)
            output.WriteFaults(path, faults);
        else
            output.WriteLine($"{path}: intact");
        if (facts is null)
            return;

        output.WriteLine($"  {facts.Vehicle.Name}: {facts.Entries.Count} entries, {facts.Named.Count - facts.Withheld.Count} recordings and photos, {facts.Sheets.Count} check sheets.");
        foreach (var entry in facts.WithheldEntries)
            output.WriteLine($"  Withheld: what entry {entry.Sequence} says ({entry.Kind}, {entry.Actor}).");
        foreach (var (file, copy) in facts.Withheld)
            output.WriteLine($"  Withheld: {file.Sha256} ({file.Type}, {file.Bytes} bytes){(copy is null ? "" : "; a copy stands in its place, which only its maker vouches for")}.");
        output.WriteLine($"  Hash of the last entry: {facts.Head}");
        output.WriteLine("  An archive that was made anew from its beginning, or cut at its end, looks intact by itself: compare this hash with one that was printed or sent.");
    }
}
