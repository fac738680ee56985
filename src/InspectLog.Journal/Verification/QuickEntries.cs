using System.Collections.Immutable;
using System.Text;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>Reads the entries of a sound journal. They are those that <see cref="JournalScan"/> gives, which parses each line
/// and writes it again to see how it is spelled; here its bytes are recognised, and the body alone is parsed.</summary>
internal sealed class QuickEntries : QuickPass
{
    private readonly JournalEntry[] _entries;
    private readonly string?[] _hashTexts; // each is the hash of one entry and the previous hash of the next
    private readonly EntryNames _names;
    private readonly string _before;

    private QuickEntries(ReadOnlyMemory<byte> file, int[] ends, ChainEnd after, EntryNames names)
        : base(file, ends, after)
    {
        (_entries, _hashTexts, _names) = (new JournalEntry[ends.Length], new string?[ends.Length], names);
        _before = Convert.ToHexStringLower(after.Hash.Span);
    }

    /// <summary>The entries of a journal; null where it is not sound for sure.</summary>
    public static ImmutableList<JournalEntry>? Of(ReadOnlyMemory<byte> file) =>
        Of(file, ChainEnd.None, new()) is { } lines ? Erased.In([.. lines.Entries]) : null;

    /// <summary>The entries of a part of a journal as its lines have them; null where it is not sound for sure.</summary>
    /// <param name="part">Whole lines.</param>
    /// <param name="after">What the first of them has to follow from.</param>
    /// <param name="names">The names that were read already.</param>
    public static QuickLines? Of(ReadOnlyMemory<byte> part, ChainEnd after, EntryNames names) =>
        EndsOfLines(part.Span) is { } ends && new QuickEntries(part, ends, after, names) is var entries && entries.IsSound()
            ? new(entries._entries, ends, entries.HashesOfAll)
            : null;

    /// <summary>The entry of one line as it stands there; null where it is not sound for sure.</summary>
    /// <param name="line">The line without its end.</param>
    /// <param name="names">The names that were read already.</param>
    public static JournalEntry? One(ReadOnlySpan<byte> line, EntryNames names) =>
        QuickLine.TryRead(line, new byte[line.Length], out var read)
            ? Entry(read, Encoding.ASCII.GetString(read.Previous), Encoding.ASCII.GetString(read.Hash), names)
            : null;

    /// <inheritdoc/>
    protected override bool Take(int at, in QuickLine read, ReadOnlyMemory<byte> line)
    {
        _entries[at] = Entry(read, at == 0 ? _before : HashText(at - 1, read.Previous), HashText(at, read.Hash), _names);
        return true;
    }

    private static JournalEntry Entry(in QuickLine read, string previous, string hash, EntryNames names)
    {
        var kind = names.Of(read.Kind);
        var body = read.IsWithheld ? null : BodyJson.Read(kind, read.Version, read.Body);
        return new(
            read.Sequence,
            QuickTime.TimeOf(read.Time),
            QuickTime.OffsetOf(read.Offset),
            names.Of(read.Actor),
            body,
            kind,
            read.Version,
            previous,
            hash)
        {
            Device = read.Device.IsEmpty ? null : names.Of(read.Device),
            IsWithheld = read.IsWithheld,
            UnreadBody = body is null && !read.IsWithheld ? Encoding.UTF8.GetString(read.Body) : null,
        };
    }

    // Two spellings of one hash break the chain, and then nothing of this is used.
    private string HashText(int at, ReadOnlySpan<byte> spelled) => Volatile.Read(ref _hashTexts[at])
        ?? (Encoding.ASCII.GetString(spelled) is var text ? Interlocked.CompareExchange(ref _hashTexts[at], text, null) ?? text : text);
}

/// <summary>Sound lines of a journal.</summary>
/// <param name="Entries">Their entries.</param>
/// <param name="Ends">Where they end, bytes from the start of the part.</param>
/// <param name="Hashes">Their hashes, 32 bytes each.</param>
internal sealed record QuickLines(IReadOnlyList<JournalEntry> Entries, IReadOnlyList<int> Ends, ReadOnlyMemory<byte> Hashes);
