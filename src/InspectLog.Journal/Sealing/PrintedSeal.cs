using System.Globalization;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Sealing;

/// <summary>What a printed report says of the record, and its QR code again: enough to check a journal years later.</summary>
/// <param name="Vehicle">Id of the vehicle.</param>
/// <param name="Count">How many entries the journal had.</param>
/// <param name="Record">The head of the record, lower-case hex.</param>
/// <param name="Key">Fingerprint of the key it was sealed with, or its beginning, lower-case hex; null where it was not
/// sealed.</param>
public sealed record PrintedSeal(string Vehicle, long Count, string Record, string? Key)
{
    // Capitals, digits and blanks make a QR code of fewer and larger dots (ISO/IEC 18004, alphanumeric mode).
    private const string Begin = "INSPECTLOG SEAL 1";
    private const string NoKey = "-";

    /// <summary>The text of the QR code.</summary>
    public string Text => string.Create(
        CultureInfo.InvariantCulture,
        $"{Begin} {Vehicle.ToUpperInvariant()} {Count} {Record.ToUpperInvariant()} {Key?[..KeyFingerprint.ShortDigits].ToUpperInvariant() ?? NoKey}");

    /// <summary>What a seal's report says.</summary>
    public static PrintedSeal Of(SignedSeal seal) =>
        new(seal.Seal.Vehicle, seal.Seal.Count, seal.Seal.Record, seal.Key.Fingerprint);

    /// <summary>Reads the text of a QR code; null where it is none of a report.</summary>
    public static PrintedSeal? Read(string text)
    {
        var words = text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries);
        return words is [.. var begin, var vehicle, var count, var record, var key]
            && string.Join(' ', begin).Equals(Begin, StringComparison.OrdinalIgnoreCase)
            && long.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var entries) && entries > 0
            && record.Length == 64 && record.All(char.IsAsciiHexDigit)
            && (key == NoKey || KeyFingerprint.Read(key) is not null)
            ? new(vehicle.ToLowerInvariant(), entries, record.ToLowerInvariant(), key == NoKey ? null : KeyFingerprint.Read(key))
            : null;
    }

    /// <summary>Holds what was printed against a journal. Pure.</summary>
    public SealComparison Compare(JournalChain chain)
    {
        if (chain.HashOf(Count) is not { } hash)
        {
            return new(chain.IsDamaged ? SealStanding.Unknown : SealStanding.Cut, 0, 0, [], []);
        }

        var withheld = chain.Withheld.TakeWhile(sequence => sequence <= Count).ToList();
        var erased = chain.ErasedSince(Count);
        var isWhole = RecordHead.Of(Count, hash, withheld) == Record || RecordHead.Of(Count, hash, withheld.Except(erased)) == Record;
        return !isWhole && RecordHead.Of(Count, hash, []) != Record
            ? new(SealStanding.Rewritten, 0, 0, [], [])
            : new(chain.Count == Count ? SealStanding.Current : SealStanding.Continued, Count, chain.Count - Count, isWhole ? [] : [.. withheld.Except(erased)], []) { ErasedSince = erased };
    }
}
