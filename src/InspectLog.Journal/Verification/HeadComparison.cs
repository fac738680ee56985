using System.Globalization;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>What came of holding a printed head against a journal that has it at one of its entries.</summary>
/// <param name="Entries">How many entries the head was printed of.</param>
/// <param name="Later">How many came later.</param>
/// <param name="WithheldSince">Sequences of the entries that the head knows in full and that are withheld now.</param>
public sealed record HeadComparison(long Entries, long Later, IReadOnlyList<long> WithheldSince)
{
    /// <summary>Sequences of the entries that the head knows in full and that are erased since, as a later entry says.</summary>
    public IReadOnlyList<long> ErasedSince { get; init; } = [];

    /// <summary>Whether the journal still is what the head was printed of.</summary>
    public bool IsMatch => WithheldSince.Count == 0;

    /// <summary>Looks for the entry a head was printed at; null where no entry of the journal has it.</summary>
    /// <param name="head">The head, 64 lower-case hex digits.</param>
    /// <param name="entries">How many entries the journal has; none is missing.</param>
    /// <param name="hashOf">The hash of the entry of a sequence.</param>
    /// <param name="withheld">Sequences of those that are withheld, rising.</param>
    /// <param name="erasedBy">Which of those were erased, and by which later entries.</param>
    internal static HeadComparison? Of(
        string head, long entries, Func<long, string?> hashOf, IReadOnlyList<long> withheld, IReadOnlyDictionary<long, long> erasedBy) =>
        At(head, entries, hashOf, withheld) is { } count ? new(count, entries - count, [])
        : BeforeErasures(head, entries, hashOf, withheld, erasedBy) is { } before ? before
        : withheld.Count > 0 && At(head, entries, hashOf, withheld: []) is { } whole
            ? new(whole, entries - whole, [.. withheld.TakeWhile(one => one <= whole)])
        : null;

    /// <summary>A head that was printed before something was erased: up to each tombstone, what it took was there.</summary>
    private static HeadComparison? BeforeErasures(
        string head, long entries, Func<long, string?> hashOf, IReadOnlyList<long> withheld, IReadOnlyDictionary<long, long> erasedBy)
    {
        foreach (var tombstone in erasedBy.Values.Distinct().Order())
        {
            var then = withheld.Where(one => !(erasedBy.TryGetValue(one, out var by) && by >= tombstone)).ToList();
            if (At(head, tombstone - 1, hashOf, then) is { } count)
            {
                return new(count, entries - count, []) { ErasedSince = [.. withheld.Except(then).Where(one => one <= count)] };
            }
        }

        return null;
    }

    private static long? At(string head, long entries, Func<long, string?> hashOf, IReadOnlyList<long> withheld)
    {
        var (list, next) = ("", 0);
        for (var count = 1L; count <= entries; count++)
        {
            for (; next < withheld.Count && withheld[next] <= count; next++)
            {
                list += (next == 0 ? "" : ",") + withheld[next].ToString(CultureInfo.InvariantCulture);
            }

            if (RecordHead.Of(count, hashOf(count)!, list) == head)
            {
                return count;
            }
        }

        return null;
    }
}
