using InspectLog.Journal.Verification;
using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>The head of a record as a report printed it, to be held against the folder.</summary>
internal static class HeadOption
{
    public static Option<string?> Of()
    {
        var option = new Option<string?>("--head")
        {
            Description = "The head printed on a report: says whether a journal here is the one of that report, and whether anything was withheld since.",
            HelpName = "VALUE",
        };
        option.Validators.Add(given =>
        {
            if (Digits(given.GetValueOrDefault<string?>()) is not { Length: 64 } digits || !digits.All(char.IsAsciiHexDigitLower))
                given.AddError("--head is the head of the record as the report prints it: 64 digits and letters from a to f. Spaces do not matter.");
        });
        return option;
    }

    /// <summary>Holds a printed head against journals and says what came out.</summary>
    /// <returns>Whether a journal is the one it was printed of, with nothing withheld since.</returns>
    public static bool Compare(TextWriter output, IReadOnlyList<HeldJournal> journals, string typed)
    {
        var head = Digits(typed)!;
        var found = journals.Select(journal => (File: journal.Name, Found: journal.Chain.Find(head))).Where(one => one.Found is not null).ToList();
        foreach (var (file, comparison) in found)
            output.WriteLine($"{file}: {Words(comparison!)}");
        foreach (var damaged in journals.Where(journal => journal.Chain.IsDamaged && journal.Chain.Record == head))
            output.WriteLine($"{damaged.Name}: DAMAGED: its last entry that can be read is that of the paper. What stands in the damaged lines cannot be compared.");
        if (found.Count == 0)
            output.WriteLine(
                "NO MATCH: no journal here has this head, at any of its entries. It was cut short or written anew since, or "
                + "something of it was withheld or damaged, or it is another vehicle's. Look whether the head was typed as printed.");
        return found.Exists(one => one.Found!.IsMatch);
    }

    private static string Words(HeadComparison found) => found switch
    {
        { WithheldSince.Count: > 0 and var count } =>
            $"WITHHELD SINCE: its first {found.Entries} entries are those of the paper, but {(count == 1 ? "1 of them is" : $"{count} of them are")} withheld now: {string.Join(", ", found.WithheldSince.Select(one => $"#{one}"))}",
        { Later: 0 } => $"this is the journal of the paper, all {found.Entries} entries",
        _ => $"this is the journal of the paper: its first {found.Entries} entries are unchanged, and {found.Later} came later{Erased(found)}",
    };

    private static string Erased(HeadComparison found) => found.ErasedSince.Count == 0 ? ""
        : $", which say that {string.Join(", ", found.ErasedSince.Select(one => $"#{one}"))} {(found.ErasedSince.Count == 1 ? "was" : "were")} erased since";

    private static string? Digits(string? typed) =>
        typed is null ? null : string.Concat(typed.Where(c => !char.IsWhiteSpace(c))).ToLowerInvariant();
}
