using InspectLog.Journal.Record;

namespace InspectLog.Journal.Sealing;

/// <summary>What a seal says of a journal.</summary>
/// <param name="Vehicle">Id of the vehicle, as the workshop that sealed it calls it.</param>
/// <param name="First">Hash of the journal's first entry, lower-case hex: which journal it is.</param>
/// <param name="Count">How many entries the journal had.</param>
/// <param name="Head">Hash of the last of them, lower-case hex, which stands for all of them.</param>
/// <param name="Withheld">Sequences of those whose bodies were withheld, rising.</param>
/// <param name="Time">When, by the clock of the computer it was made on; whole seconds, UTC.</param>
/// <param name="Program">The program that made it, with its version.</param>
public sealed record Seal(
    string Vehicle, string First, long Count, string Head, IReadOnlyList<long> Withheld, DateTimeOffset Time, string Program)
{
    /// <summary>The seal that was there before; null where it is the first.</summary>
    public EarlierSeal? Earlier { get; init; }

    /// <summary>SHA-256 of the manifest of an archive (<c>manifest-sha256.txt</c>), which stands for every file in it,
    /// lower-case hex; null for the seal of a journal alone.</summary>
    public string? Manifest { get; init; }

    /// <summary>The head of the record, as reports print it.</summary>
    public string Record => RecordHead.Of(Count, Head, Withheld);
}

/// <summary>A seal that was there when another was made.</summary>
/// <param name="Count">How many entries it was of.</param>
/// <param name="Head">Hash of the last of them, lower-case hex.</param>
public sealed record EarlierSeal(long Count, string Head);
