using System.Collections.Concurrent;
using System.Collections.Frozen;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>Reads a sound journal by its bytes, on all processors, without making an object of each line. It knows what is
/// sound for sure; a journal with a line of which it is not sure is read the slow way, which says what is wrong.</summary>
internal sealed class QuickScan
{
    private const byte LineEnd = (byte)'\n';
    private const int HashBytes = 32;
    private const int LinesAtOnce = 512;
    private const int LongestKind = 64;

    // Of these the bodies are needed: they name files, sheets or heads of journals.
    private static readonly FrozenSet<string> Pointing = new[]
    {
        typeof(RecordingKept), typeof(UtteranceKept), typeof(PhotoKept), typeof(VehiclePictured), typeof(InspectionStarted),
        typeof(VehiclesNoted), typeof(WorkshopNoted), typeof(LossAccepted),
    }.Select(EntryKinds.KindOf).ToFrozenSet(StringComparer.Ordinal);

    private readonly ReadOnlyMemory<byte> _file;
    private readonly int[] _ends;
    private readonly long[] _sequences;
    private readonly byte[] _hashes;
    private readonly byte[] _previous;
    private readonly ConcurrentBag<long> _withheld = [];
    private readonly ConcurrentBag<JournalEntry> _pointing = [];
    private int _unread;

    private QuickScan(ReadOnlyMemory<byte> file, int[] ends)
    {
        _file = file;
        _ends = ends;
        _sequences = new long[ends.Length];
        _hashes = new byte[ends.Length * HashBytes];
        _previous = new byte[ends.Length * HashBytes];
    }

    /// <summary>What a journal holds; null where it is not sound for sure.</summary>
    public static JournalFacts? Of(ReadOnlyMemory<byte> file) =>
        EndsOfLines(file.Span) is { } ends ? new QuickScan(file, ends).Read() : null;

    private static int[]? EndsOfLines(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty || file[^1] != LineEnd)
        {
            return null;
        }

        var ends = new int[file.Count(LineEnd)];
        for (var (line, at) = (0, 0); line < ends.Length; line++)
        {
            ends[line] = at + file[at..].IndexOf(LineEnd);
            at = ends[line] + 1;
        }

        return ends;
    }

    private JournalFacts? Read()
    {
        var isSound = true;
        Parallel.For(0, (_ends.Length + LinesAtOnce - 1) / LinesAtOnce, (part, loop) =>
        {
            if (!ReadLines(part * LinesAtOnce, Math.Min(_ends.Length, (part + 1) * LinesAtOnce)))
            {
                Volatile.Write(ref isSound, false);
                loop.Stop();
            }
        });
        return isSound && IsChained()
            ? new(new EntryHashes(_sequences, _hashes), [], [.. _withheld.Order()], _unread, [.. _pointing.OrderBy(entry => entry.Sequence)])
            : null;
    }

    private bool ReadLines(int from, int to)
    {
        var longest = 0;
        for (var line = from; line < to; line++)
        {
            longest = Math.Max(longest, _ends[line] - StartOf(line));
        }

        var room = new byte[longest];
        for (var line = from; line < to; line++)
        {
            if (!ReadLine(line, room))
            {
                return false;
            }
        }

        return true;
    }

    private bool ReadLine(int line, byte[] room)
    {
        var bytes = _file[StartOf(line).._ends[line]];
        if (!QuickLine.TryRead(bytes.Span, room, out var read)
            || Convert.FromHexString(read.Hash, _hashes.AsSpan(line * HashBytes, HashBytes), out _, out _) != System.Buffers.OperationStatus.Done
            || Convert.FromHexString(read.Previous, _previous.AsSpan(line * HashBytes, HashBytes), out _, out _) != System.Buffers.OperationStatus.Done)
        {
            return false;
        }

        _sequences[line] = read.Sequence;
        if (read.IsWithheld)
        {
            _withheld.Add(read.Sequence);
        }

        return Take(read, bytes);
    }

    private bool Take(QuickLine read, ReadOnlyMemory<byte> line)
    {
        Span<char> room = stackalloc char[LongestKind];
        if (read.Kind.Length > LongestKind || !System.Text.Encoding.UTF8.TryGetChars(read.Kind, room, out var length))
        {
            return false;
        }

        var kind = room[..length];
        if (!read.IsWithheld && !EntryKinds.Knows(kind, read.Version))
        {
            Interlocked.Increment(ref _unread);
        }
        else if (!read.IsWithheld && Pointing.GetAlternateLookup<ReadOnlySpan<char>>().Contains(kind))
        {
            _pointing.Add(EntryLine.Read(line)); // what is sound by its bytes is sound the slow way too
        }

        return true;
    }

    private bool IsChained()
    {
        for (var line = 0; line < _ends.Length; line++)
        {
            var before = line == 0 ? default : _hashes.AsSpan((line - 1) * HashBytes, HashBytes);
            var previous = _previous.AsSpan(line * HashBytes, HashBytes);
            if (_sequences[line] != line + 1 || !(line == 0 ? !previous.ContainsAnyExcept((byte)0) : previous.SequenceEqual(before)))
            {
                return false;
            }
        }

        return true;
    }

    private int StartOf(int line) => line == 0 ? 0 : _ends[line - 1] + 1;
}
