using System.Collections.Immutable;
using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>Journals, keys and seals made for one test.</summary>
internal static class SomeSeals
{
    public const string Program = "InspectLog 1.0";

    /// <summary>A journal of a vehicle and some notes, in memory, with real hashes.</summary>
    public static ImmutableList<JournalEntry> Journal(int count, string name = "Marigold") =>
        After([], [Some.Vehicle(name), .. Enumerable.Range(2, Math.Max(0, count - 1)).Select(n => new NoteWritten(0, null, $"Note {n}"))]);

    /// <summary>A journal with some more entries.</summary>
    public static ImmutableList<JournalEntry> After(ImmutableList<JournalEntry> before, params IReadOnlyList<EntryBody> bodies) =>
        [.. before, .. NewEntries.Of(Some.Technician, bodies, before, Some.Clock().GetLocalNow()).Entries];

    /// <summary>The same journal with some bodies withheld.</summary>
    public static JournalChain Withholding(this IEnumerable<JournalEntry> entries, params long[] sequences) =>
        JournalChain.Of([.. entries.Select(entry => entry with { IsWithheld = sequences.Contains(entry.Sequence) })]);

    public static JournalChain Chain(this IReadOnlyList<JournalEntry> entries) => JournalChain.Of(entries);

    /// <summary>What a seal of a journal says.</summary>
    public static Seal Of(JournalChain chain, EarlierSeal? earlier = null) => new(
        "marigold", chain.HashOf(1)!, chain.Count, chain.HashOf(chain.Count)!, chain.Withheld, new(2026, 11, 25, 10, 30, 0, TimeSpan.Zero), Program)
    {
        Earlier = earlier,
    };

    public static EarlierSeal AsEarlier(this Seal seal) => new(seal.Count, seal.Head);

    /// <summary>A JWS of any header and payload, signed with a key.</summary>
    public static string Forged(SealKey key, string header, byte[] payload)
    {
        var parts = new JwsParts(Encoding.UTF8.GetBytes(header), payload, []);
        return (parts with { Signature = key.Sign(parts.SigningInput) }).Compact;
    }

    public static string HeaderOf(SealKey key) => Encoding.UTF8.GetString(SealHeader.Write(key.Public));
}
