using System.Collections.Immutable;

namespace InspectLog.Journal.Record;

/// <summary>A journal file's bytes, read to their end: what is sound before and after damage, and what is damaged.</summary>
/// <param name="Entries">The sound entries, by rising sequence. Where one does not follow from the one before it, the
/// chain is broken there, and <paramref name="Damage"/> says of what.</param>
/// <param name="SoundBytes">Length of the part before the first line that is not sound.</param>
/// <param name="Damage">The lines that are not sound, in order; none where all are.</param>
internal sealed record JournalScan(
    ImmutableList<JournalEntry> Entries, int SoundBytes, ImmutableList<BrokenLine> Damage)
{
    /// <summary>The first line that is not sound; null when all are.</summary>
    public BrokenLine? Broken => Damage.IsEmpty ? null : Damage[0];

    /// <summary>Reads a whole file.</summary>
    public static JournalScan Of(ReadOnlyMemory<byte> file)
    {
        var lines = Erased.Vouched(ScannedLine.Of(file));
        var lastSound = lines.FindLastIndex(line => line.Entry is not null);
        var lastZero = file.Span.LastIndexOf((byte)0);
        var salvage = new Salvage(lines);
        for (var at = 0; at < lines.Count; at++)
        {
            if (at > lastSound && IsTorn(lines[at], lastZero))
            {
                salvage.EndUnfinished(at);
                break;
            }

            salvage.Take(at);
        }

        return new(Erased.In(salvage.Entries), salvage.SoundBytes ?? file.Length, salvage.Damage);
    }

    /// <summary>Whether a line after the last sound one, and what follows it, is the remains of a write that never
    /// finished. Such a write was never acknowledged. It leaves a last line without its end or, after a power cut, zeros
    /// where a page never reached the disk. Anything else was once written whole, and has been damaged or changed since.
    /// </summary>
    private static bool IsTorn(ScannedLine line, int lastZero) => !line.IsEnded || lastZero >= line.Start;
}
