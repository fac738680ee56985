using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands;

/// <summary>What seals say about a journal, as text for people.</summary>
internal static class SealText
{
    public static void WriteSeals(this TextWriter output, SealsReport seals, string? key)
    {
        foreach (var fault in SealWords.Faults(seals, key))
            output.WriteLine($"  SEAL: {fault}");
        foreach (var one in seals.Seals.Where(one => one.Kept.Sound is not null))
            output.WriteLine($"  Seal of {SealWords.Line(one)}");
        foreach (var earlier in seals.Missing)
            output.WriteLine($"  A later seal names one of the first {earlier.Count} entries that is not here. That takes nothing from the later one.");
        if (seals.Keys.Count > 1)
            output.WriteLine($"  The seals were made with {seals.Keys.Count} keys.");
    }

    public static void WriteMeaning(this TextWriter output, IReadOnlyList<string> meaning)
    {
        output.WriteLine("What a seal says:");
        foreach (var sentence in meaning)
            output.WriteLine($"  {sentence}");
    }
}
