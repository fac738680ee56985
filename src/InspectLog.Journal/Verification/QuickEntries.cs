using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>Reads the entries of a sound journal. They are those that <see cref="JournalScan"/> gives, which parses each line
/// and writes it again to see how it is spelled; here its bytes are recognised, and the body alone is parsed.</summary>
internal sealed class QuickEntries : QuickPass
{
    private readonly JournalEntry[] _entries;
    private readonly string?[] _hashTexts; // each is the hash of one entry and the previous hash of the next
    private readonly ConcurrentDictionary<string, string> _names = new(StringComparer.Ordinal); // few, and on every line

    private QuickEntries(ReadOnlyMemory<byte> file, int[] ends)
        : base(file, ends) => (_entries, _hashTexts) = (new JournalEntry[ends.Length], new string?[ends.Length]);

    /// <summary>The entries of a journal; null where it is not sound for sure.</summary>
    public static ImmutableList<JournalEntry>? Of(ReadOnlyMemory<byte> file) =>
        EndsOfLines(file.Span) is { } ends && new QuickEntries(file, ends) is var entries && entries.IsSound()
            ? Erased.In([.. entries._entries])
            : null;

    /// <inheritdoc/>
    protected override bool Take(int at, in QuickLine read, ReadOnlyMemory<byte> line)
    {
        var kind = Text(read.Kind);
        var body = read.IsWithheld ? null : BodyJson.Read(kind, read.Version, read.Body);
        _entries[at] = new JournalEntry(
            read.Sequence,
            QuickTime.TimeOf(read.Time),
            QuickTime.OffsetOf(read.Offset),
            Text(read.Actor),
            body,
            kind,
            read.Version,
            at == 0 ? EntryLine.NoPrevious : HashText(at - 1, read.Previous),
            HashText(at, read.Hash))
        {
            Device = read.Device.IsEmpty ? null : Text(read.Device),
            IsWithheld = read.IsWithheld,
            UnreadBody = body is null && !read.IsWithheld ? Encoding.UTF8.GetString(read.Body) : null,
        };
        return true;
    }

    // Two spellings of one hash break the chain, and then nothing of this is used.
    private string HashText(int at, ReadOnlySpan<byte> spelled) => Volatile.Read(ref _hashTexts[at])
        ?? (Encoding.ASCII.GetString(spelled) is var text ? Interlocked.CompareExchange(ref _hashTexts[at], text, null) ?? text : text);

    /// <summary>What stands between the quotes of a string.</summary>
    private string Text(ReadOnlySpan<byte> spelled)
    {
        var text = Encoding.UTF8.GetString(spelled);
        if (text.Contains('\\', StringComparison.Ordinal))
        {
            text = JsonSerializer.Deserialize<string>($"\"{text}\"")!;
        }

        return _names.GetOrAdd(text, text);
    }
}
