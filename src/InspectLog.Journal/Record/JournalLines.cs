using System.Collections.Immutable;

namespace InspectLog.Journal.Record;

/// <summary>The lines of a journal that stands elsewhere than in a data folder: in an archive, or on its way into one.
/// Pure.</summary>
public static class JournalLines
{
    private const byte LineEnd = (byte)'\n';

    /// <summary>Reads a journal's bytes as far as they are sound.</summary>
    public static JournalContents Read(ReadOnlyMemory<byte> journal)
    {
        var scan = JournalScan.Of(journal);
        return new(scan.Entries, scan.SoundBytes, scan.Broken);
    }

    /// <summary>A line with its body and salt taken out, as FORMAT.md says: its hash and its place in the chain stay good, and
    /// what it said can no longer be guessed.</summary>
    /// <param name="line">A sound line, without its end.</param>
    /// <exception cref="FormatException">It is no line of a journal.</exception>
    public static byte[] WithoutBody(ReadOnlyMemory<byte> line) => EntryLine.WithoutBody(line);

    /// <summary>Where the line after so many begins: the length of the journal when it has no more.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="lines">How many lines stand before it.</param>
    internal static int StartAfter(ReadOnlySpan<byte> journal, int lines)
    {
        var at = 0;
        for (var line = 0; line < lines; line++)
        {
            at += journal[at..].IndexOf(LineEnd) + 1;
        }

        return at;
    }

    /// <summary>The lengths of lines without their ends, bytes.</summary>
    /// <param name="lines">Whole lines.</param>
    internal static List<int> LengthsOf(ReadOnlySpan<byte> lines)
    {
        var lengths = new List<int>();
        while (!lines.IsEmpty)
        {
            lengths.Add(lines.IndexOf(LineEnd));
            lines = lines[(lengths[^1] + 1)..];
        }

        return lengths;
    }
}

/// <summary>A journal's bytes, read as far as they are sound.</summary>
/// <param name="Entries">The sound entries.</param>
/// <param name="SoundBytes">Length of the sound part, bytes.</param>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
public sealed record JournalContents(ImmutableList<JournalEntry> Entries, int SoundBytes, BrokenLine? Broken);
