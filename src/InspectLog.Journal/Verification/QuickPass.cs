namespace InspectLog.Journal.Verification;

/// <summary>Goes through a journal by its bytes, on all processors. It knows what is sound for sure; where a line is not, it
/// steps back, and the journal is read the slow way, which says what is wrong.</summary>
internal abstract class QuickPass
{
    private const byte LineEnd = (byte)'\n';
    private const int HashBytes = 32;
    private const int LinesAtOnce = 512;

    private readonly ReadOnlyMemory<byte> _file;
    private readonly int[] _ends;
    private readonly long[] _sequences;
    private readonly byte[] _hashes;
    private readonly byte[] _previous;
    private readonly ChainEnd _after;

    /// <summary>Goes through a file that has lines, or through a part of one.</summary>
    /// <param name="file">The file.</param>
    /// <param name="ends">Where its lines end.</param>
    /// <param name="after">What its first line has to follow from.</param>
    protected QuickPass(ReadOnlyMemory<byte> file, int[] ends, ChainEnd? after = null)
    {
        _file = file;
        _ends = ends;
        _after = after ?? ChainEnd.None;
        _sequences = new long[ends.Length];
        _hashes = new byte[ends.Length * HashBytes];
        _previous = new byte[ends.Length * HashBytes];
    }

    /// <summary>The hashes of the entries, once all were read.</summary>
    protected EntryHashes Hashes => new(_sequences, _hashes);

    /// <summary>The hashes of the entries one after the other, 32 bytes each, once all were read.</summary>
    protected ReadOnlyMemory<byte> HashesOfAll => _hashes;

    /// <summary>Where the lines of a file end; null where it has none, or the last has no end.</summary>
    protected static int[]? EndsOfLines(ReadOnlySpan<byte> file)
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

    /// <summary>Reads all lines; false where the journal is not sound for sure.</summary>
    protected bool IsSound() => ForAll(ReadLines) && IsChained();

    /// <summary>Does something with all lines, some at a time, on all processors, until one says no.</summary>
    protected bool ForAll(Func<int, int, bool> part)
    {
        var parts = (_ends.Length + LinesAtOnce - 1) / LinesAtOnce;
        var isSound = true;
        Parallel.For(0, parts, (at, loop) =>
        {
            if (!part(at * LinesAtOnce, Math.Min(_ends.Length, (at + 1) * LinesAtOnce)))
            {
                Volatile.Write(ref isSound, false);
                loop.Stop();
            }
        });
        return isSound;
    }

    /// <summary>Takes a line that is sound by itself; false where that is not sure after all. Called by several threads at
    /// once.</summary>
    /// <param name="at">Its place, from 0.</param>
    /// <param name="read">What it is.</param>
    /// <param name="line">The line.</param>
    protected abstract bool Take(int at, in QuickLine read, ReadOnlyMemory<byte> line);

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
        return Take(line, read, bytes);
    }

    private bool IsChained()
    {
        for (var line = 0; line < _ends.Length; line++)
        {
            var before = line == 0 ? _after.Hash.Span : _hashes.AsSpan((line - 1) * HashBytes, HashBytes);
            if (_sequences[line] != _after.Sequence + line + 1 || !_previous.AsSpan(line * HashBytes, HashBytes).SequenceEqual(before))
            {
                return false;
            }
        }

        return true;
    }

    private int StartOf(int line) => line == 0 ? 0 : _ends[line - 1] + 1;
}

/// <summary>How far a journal has been read: what the next entry has to follow from.</summary>
/// <param name="Sequence">Sequence of the last entry; 0 before the first.</param>
/// <param name="Hash">Its hash, 32 bytes; zeros before the first.</param>
internal sealed record ChainEnd(long Sequence, ReadOnlyMemory<byte> Hash)
{
    /// <summary>Before the first entry.</summary>
    public static ChainEnd None { get; } = new(0, new byte[32]);
}
