using InspectLog.App.Ui;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Journal.Sealing;

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

    public static void WriteArchive(this TextWriter output, string path, IReadOnlyList<BagFault> faults, ArchiveFacts? facts, string? key)
    {
        var broken = facts?.Seals.Faults(key) ?? [];
        if (faults.Count > 0 || broken.Count > 0)
            output.WriteFaults(path, faults);
        else
            output.WriteLine($"{path}: intact");
        foreach (var fault in broken)
            output.WriteLine($"  SEAL: {fault}");
        if (facts is null)
            return;

        output.WriteLine($"  {facts.Vehicle.Name}: {facts.Entries.Count} entries, {facts.Named.Count - facts.Withheld.Count} recordings and photos, {facts.Sheets.Count} check sheets.");
        foreach (var entry in facts.WithheldEntries)
            output.WriteLine($"  {(entry.ErasedBy is { } by ? $"Erased, as entry {by} says" : "Withheld")}: what entry {entry.Sequence} says ({entry.Kind}, {entry.Actor}){(entry.IsRestated ? "; it is said again without the person" : "")}.");
        foreach (var tombstone in facts.Vehicle.Erasures)
            output.WriteLine($"  {TombstoneWords.Of(tombstone)}");
        foreach (var (file, copy) in facts.Withheld)
            output.WriteLine($"  Withheld: {file.Sha256} ({file.Type}, {file.Bytes} bytes){(copy is null ? "" : "; a copy stands in its place, which only its maker vouches for")}.");
        output.WriteLine($"  Hash of the last entry: {facts.Head}");
        output.WriteLine($"  {HeadWords.Of(isDamaged: false)}: {facts.Seals.Chain.Record}");
        foreach (var one in facts.Seals.Report.Seals.Where(one => one.Kept.Sound is not null))
            output.WriteLine($"  {(one.Kept == facts.Seals.Own ? "Sealed as an archive on" : "Seal of")} {SealWords.Line(one)}");
        foreach (var sentence in facts.Seals.Told())
            output.WriteLine($"  {sentence}");
    }
}
