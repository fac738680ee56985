using InspectLog.Journal.Sealing;

namespace InspectLog.App.Archiving;

/// <summary>What came of holding a printed report against a journal.</summary>
/// <param name="IsKept">Whether the journal is the one of the report, with nothing withheld since.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record PrintedFinding(bool IsKept, string Words);

/// <summary>Holds what a printed report says, its head of the record or the text of its picture, against a journal. Pure.</summary>
internal static class PrintedCheck
{
    private const int Digits = 64;

    /// <summary>Whether a text is one of the two.</summary>
    public static bool CanRead(string typed) => HeadOf(typed) is not null || PrintedSeal.Read(typed) is not null;

    /// <summary>What came of it; null where nothing was given.</summary>
    public static PrintedFinding? Of(string typed, JournalChain chain) =>
        HeadOf(typed) is { } head ? OfHead(head, chain)
        : PrintedSeal.Read(typed) is { } printed ? Of(printed.Compare(chain))
        : null;

    private static PrintedFinding OfHead(string head, JournalChain chain) => chain.Find(head) is { } found
        ? Of(new(found.Later == 0 ? SealStanding.Current : SealStanding.Continued, found.Entries, found.Later, found.WithheldSince, []) { ErasedSince = found.ErasedSince })
        : new(false, "This is not the journal of the printed report, at any of its entries: it was cut or written anew since, something was withheld, or it is another vehicle’s. Look whether the head was typed as printed.");

    private static PrintedFinding Of(SealComparison found) => found switch
    {
        { Stands: true, WithheldSince.Count: > 0 } => new(false, $"This is the journal of the printed report, and withheld since it was printed: {SealWords.Numbers(found.WithheldSince)}."),
        { Stands: true } => new(true, $"This is the journal of the printed report, with {SealWords.Entries(found.Later)} later{(found.ErasedSince.Count == 0 ? "" : $", which say that of its entries {SealWords.Numbers(found.ErasedSince)} {(found.ErasedSince.Count == 1 ? "was" : "were")} erased since")}."),
        { Standing: SealStanding.Cut } => new(false, "The printed report is of more entries than are here: the journal was cut, or it is another vehicle’s."),
        _ => new(false, "This is not the journal of the printed report: it was changed, something was withheld, or it is another vehicle’s."),
    };

    private static string? HeadOf(string typed) =>
        string.Concat(typed.Where(c => !char.IsWhiteSpace(c))).ToLowerInvariant() is { Length: Digits } digits && digits.All(char.IsAsciiHexDigitLower)
            ? digits
            : null;
}
