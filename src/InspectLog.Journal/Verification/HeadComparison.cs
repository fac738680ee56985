using System.Globalization;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>What came of holding a printed head against a journal that has it at one of its entries.</summary>
/// <param name="Entries">How many entries the head was printed of.</param>
/// <param name="Later">How many came later.</param>
/// <param name="WithheldSince">Sequences of the entries that the head knows in full and that are withheld now.</param>
public sealed record HeadComparison(long Entries, long Later, IReadOnlyList<long> WithheldSince)
{
    /// <summary>Whether the journal still is what the head was printed of.</summary>
    public bool IsMatch => WithheldSince.Count == 0;

    /// <summary>Looks for the entry a head was printed at; null where no entry of the journal has it.</summary>
    /// <param name="head">The head, 64 lower-case hex digits.</param>
    /// <param name="entries">How many entries the journal has; none is missing.</param>
    /// <param name="hashOf">The hash of the entry of a sequence.</param>
    /// <param name="withheld">Sequences of those that are withheld, rising.</param>
    internal static HeadComparison? Of(string head, long entries, Func<long, string?> hashOf, IReadOnlyList<long> withheld) =>
        At(head, entries, hashOf, withheld) is { } count ? new(count, entries - count, [])
        : withheld.Count > 0 && At(head, entries, hashOf, withheld: []) is { } whole
            ? new(whole, entries - whole, [.. withheld.TakeWhile(one => one <= whole)])
        : null;

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
