using System.Globalization;

namespace InspectLog.Journal.Sealing;

/// <summary>What seals say, in sentences.</summary>
public static class SealWords
{
    private const int MostNumbers = 20;

    /// <summary>What a seal proves, and what it does not.</summary>
    public static readonly IReadOnlyList<string> Meaning =
    [
        "A seal proves that whoever has its key had these very entries, with these very ones withheld, when it was made. None of them was changed, cut or put in another order since.",
        "It does not prove what the entries say, nor when it was made: its time is that of the computer it was made on, unless it has a time stamp.",
        "It does not prove who made it: anybody can make a key. Compare the fingerprint of the key with one that came to you another way, such as a printed report, and give it with --key.",
        "Nor does it prove that nothing came after it: compare how many entries there are with the newest seal or report you have.",
    ];

    /// <summary>What is wrong, each in a sentence that says what to look at; none where the seals are kept.</summary>
    /// <param name="report">What the seals say.</param>
    /// <param name="key">The fingerprint of the key that is trusted, or its beginning; null where none was given.</param>
    public static IEnumerable<string> Faults(SealsReport report, string? key)
    {
        foreach (var (kept, comparison) in report.Seals)
        {
            if (kept.Sound is not { Seal: var seal })
            {
                yield return $"The file {kept.Name} is no seal: {kept.Problem}.";
            }
            else if (!comparison!.Stands)
            {
                yield return Broken(seal, comparison);
            }
            else if (!report.IsOfVehicle(seal))
            {
                yield return $"The seal of {Moment(seal)} is of the vehicle {seal.Vehicle}, and this is {report.VehicleId}: another vehicle's journal was put in its place, with its seals.";
            }

            if (kept.StampProblem is { } problem)
            {
                yield return $"The time stamp of the seal {kept.Name} does not hold: {problem}.";
            }
        }

        if (report.Newest(key) is { Comparison: { WithheldSince.Count: > 0 } newest, Kept.Sound.Seal: var last })
        {
            yield return $"Withheld since the seal of {Moment(last)}: {Numbers(newest.WithheldSince)}.";
        }

        if (key is not null && report.Newest(key) is null)
        {
            yield return $"No seal here was made with the key {KeyFingerprint.Grouped(key)}.";
        }
    }

    /// <summary>What a journal is to a seal that it does not keep.</summary>
    public static string Broken(Seal seal, SealComparison comparison) => comparison.Standing switch
    {
        SealStanding.Cut => $"The journal was cut: the seal of {Moment(seal)} is of {Entries(seal.Count)}, and entry {seal.Count} is not there. {Known(comparison)}",
        SealStanding.Rewritten => $"The journal was written anew: it is not the one of the seal of {Moment(seal)}, though it begins with the same entry. {Known(comparison)}",
        SealStanding.OtherJournal => $"This is another journal than that of the seal of {Moment(seal)}: another vehicle's, or one written anew from its first entry.",
        _ => $"The journal is damaged, and entry {seal.Count}, up to which the seal of {Moment(seal)} is, cannot be compared.",
    };

    /// <summary>A seal and what came after it, for people.</summary>
    public static string Line(CheckedSeal one) => one.Kept.Sound is not { } signed
        ? $"{one.Kept.Name}: no seal"
        : $"{Moment(signed.Seal)}: {Entries(signed.Seal.Count)}{Withheld(signed.Seal)}, key {KeyFingerprint.Printed(signed.Key)}{Later(one.Comparison!)}{Stamp(one.Kept)}";

    /// <summary>When a seal was made, by its own account.</summary>
    public static string Moment(Seal seal) => seal.Time.UtcDateTime.ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);

    /// <summary>Entries by their numbers.</summary>
    public static string Numbers(IReadOnlyList<long> sequences) =>
        string.Join(", ", sequences.Take(MostNumbers).Select(one => $"#{one}")) + (sequences.Count > MostNumbers ? ", …" : "");

    /// <summary>A number of entries.</summary>
    public static string Entries(long count) => count == 1 ? "1 entry" : $"{count} entries";

    private static string Withheld(Seal seal) => seal.Withheld.Count == 0 ? "" : $", {seal.Withheld.Count} of them withheld";

    private static string Later(SealComparison comparison) => comparison switch
    {
        { Stands: false } => ". NOT KEPT",
        { Later: 0 } => "",
        _ => $", {Entries(comparison.Later)} later{Erased(comparison)}",
    };

    private static string Erased(SealComparison comparison) =>
        comparison.ErasedSince.Count == 0 ? "" : $", which say that {Numbers(comparison.ErasedSince)} {(comparison.ErasedSince.Count == 1 ? "was" : "were")} erased since";

    private static string Stamp(KeptSeal kept) => kept.Stamp is { } stamp
        ? $". Time stamp of {stamp.Time.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss 'UTC'", CultureInfo.InvariantCulture)} by {stamp.Signer}, certified by {stamp.Issuer} (certificate {stamp.Certificate}); whether to trust them is for you to say"
        : "";

    private static string Known(SealComparison comparison) => comparison.Matches switch
    {
        0 => "No entry is known to be the sealed one.",
        1 => "Its first entry is the sealed one.",
        _ => $"Its first {comparison.Matches} entries are the sealed ones.",
    };
}
