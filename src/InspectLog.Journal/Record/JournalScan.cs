using System.Collections.Immutable;

namespace InspectLog.Journal.Record;

/// <summary>A journal file's bytes, read from the start as far as they are sound.</summary>
/// <param name="Entries">The sound entries.</param>
/// <param name="SoundBytes">Length of the sound part.</param>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
internal sealed record JournalScan(ImmutableList<JournalEntry> Entries, int SoundBytes, BrokenLine? Broken)
{
    private const byte LineEnd = (byte)'\n';

    /// <summary>Reads a whole file.</summary>
    public static JournalScan Of(ReadOnlyMemory<byte> file)
    {
        var entries = ImmutableList.CreateBuilder<JournalEntry>();
        var at = 0;
        while (at < file.Length)
        {
            var length = file.Span[at..].IndexOf(LineEnd);
            var previous = entries.Count == 0 ? EntryLine.NoPrevious : entries[^1].Hash;
            try
            {
                var line = file.Slice(at, length < 0 ? file.Length - at : length);
                var entry = EntryLine.Read(line, entries.Count + 1, previous);
                if (length < 0)
                {
                    throw new FormatException("its end is missing");
                }

                entries.Add(entry);
            }
            catch (FormatException problem)
            {
                var torn = IsTorn(file.Span[at..]);
                return new(entries.ToImmutable(), at, new(entries.Count + 1, problem.Message, torn));
            }

            at += length + 1;
        }

        return new(entries.ToImmutable(), at, null);
    }

    /// <summary>Whether what follows the sound part is the remains of a write that never finished. Such a write was
    /// never acknowledged. It leaves a last line without its end or, after a power cut, zeros where a page never
    /// reached the disk. Anything else was once written whole, and has been damaged or changed since.</summary>
    private static bool IsTorn(ReadOnlySpan<byte> rest)
    {
        var end = rest.IndexOf(LineEnd);
        return end < 0 || (rest.Contains((byte)0) && !HoldsSoundLine(rest[(end + 1)..]));
    }

    private static bool HoldsSoundLine(ReadOnlySpan<byte> rest)
    {
        foreach (var line in rest.Split(LineEnd))
        {
            if (EntryLine.IsSound(rest[line].ToArray()))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>The first line of a journal that is not sound.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Reason">What is wrong with it.</param>
/// <param name="IsUnfinished">Whether it is the remains of a last write that never finished, not damage.</param>
public sealed record BrokenLine(long Line, string Reason, bool IsUnfinished);
