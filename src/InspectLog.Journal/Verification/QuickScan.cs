using System.Collections.Concurrent;
using System.Collections.Frozen;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>Reads what verifying needs of a sound journal, without making an object of each line.</summary>
internal sealed class QuickScan : QuickPass
{
    private const int LongestKind = 64;

    // Of these the bodies are needed: they name files, sheets or heads of journals, or say how others are to be read.
    private static readonly FrozenSet<string> Pointing = new[]
    {
        typeof(RecordingKept), typeof(UtteranceKept), typeof(PhotoKept), typeof(VehiclePictured), typeof(InspectionStarted),
        typeof(VehiclesNoted), typeof(WorkshopNoted), typeof(LossAccepted), typeof(PersonErased), typeof(EntryRestated),
    }.Select(EntryKinds.KindOf).ToFrozenSet(StringComparer.Ordinal);

    private readonly ConcurrentBag<long> _withheld = [];
    private readonly ConcurrentBag<JournalEntry> _pointing = [];
    private int _unread;

    private QuickScan(ReadOnlyMemory<byte> file, int[] ends)
        : base(file, ends)
    {
    }

    /// <summary>What a journal holds; null where it is not sound for sure.</summary>
    public static JournalFacts? Of(ReadOnlyMemory<byte> file) =>
        EndsOfLines(file.Span) is { } ends ? new QuickScan(file, ends).Read() : null;

    /// <inheritdoc/>
    protected override bool Take(int at, in QuickLine read, ReadOnlyMemory<byte> line)
    {
        Span<char> room = stackalloc char[LongestKind];
        if (read.Kind.Length > LongestKind || !System.Text.Encoding.UTF8.TryGetChars(read.Kind, room, out var length))
        {
            return false;
        }

        var kind = room[..length];
        if (read.IsWithheld)
        {
            _withheld.Add(read.Sequence);
        }

        if (!read.IsWithheld && !EntryKinds.Knows(kind, read.Version))
        {
            Interlocked.Increment(ref _unread);
        }
        else if (Pointing.GetAlternateLookup<ReadOnlySpan<char>>().Contains(kind))
        {
            _pointing.Add(EntryLine.Read(line)); // what is sound by its bytes is sound the slow way too
        }

        return true;
    }

    private JournalFacts? Read() => IsSound()
        ? JournalFacts.Of(Hashes, [], [.. _withheld.Order()], _unread, Erased.In([.. _pointing.OrderBy(entry => entry.Sequence)]))
        : null;
}
