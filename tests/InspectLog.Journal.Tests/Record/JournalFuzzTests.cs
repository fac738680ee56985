using System.Diagnostics;
using System.Globalization;
using CsCheck;
using InspectLog.Journal.Record;
using InspectLog.Journal.Verification;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Record;

/// <summary>Journals changed at random: no entry is made up, no change goes unsaid, nothing crashes or hangs.
/// <c>INSPECTLOG_FUZZ=1000000</c> for a long run.</summary>
public sealed class JournalFuzzTests
{
    private const int Entries = 12;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);
    private static readonly byte[] Journal = Bytes[..(LineEnds[Entries - 1] + 1)];

    private static readonly Gen<Func<byte[], byte[]>> Change = Gen.Select(Gen.Int[0, 6], Gen.Double.Unit, Gen.Double.Unit, Gen.Byte, Changed);

    private static long Runs => long.Parse(Environment.GetEnvironmentVariable("INSPECTLOG_FUZZ") ?? "3000", CultureInfo.InvariantCulture);

    [Fact]
    public void Changed_journal_gives_its_sound_entries_and_says_that_it_is_damaged() => Change.Array[1, 5].Sample(
        changes =>
        {
            var bytes = changes.Aggregate(Journal, (now, change) => change(now));
            var clock = Stopwatch.GetTimestamp();

            var (scan, quick) = (JournalScan.Of(bytes), QuickScan.Of(bytes));

            Assert.True(Stopwatch.GetElapsedTime(clock) < Longest * 5, "It took too long."); // wall clock, on a busy machine
            Assert.All(scan.Entries, entry => Assert.Equal(Hashes[entry.Sequence - 1], entry.Hash));
            Assert.Equal(scan.Entries.Select(entry => entry.Sequence).Distinct().Order(), scan.Entries.Select(entry => entry.Sequence));
            if (quick is not null || scan.Damage.IsEmpty)
            {
                Assert.True(Journal.AsSpan().StartsWith(bytes) && (bytes.Length == 0 || bytes[^1] == '\n'), "A change went unsaid.");
            }
        },
        iter: Runs);

    private static Func<byte[], byte[]> Changed(int how, double at, double length, byte value) => bytes =>
    {
        var from = (int)(at * bytes.Length);
        var to = Math.Min(bytes.Length, from + 1 + (int)(length * length * 400));
        return how switch
        {
            _ when bytes.Length == 0 => [value],
            0 => [.. bytes[..from], value, .. bytes[to..]],
            1 => Flip(bytes, Math.Min(from, bytes.Length - 1) * 8 + (value % 8)),
            2 => bytes[..from],
            3 => [.. bytes[..from], .. bytes[to..]],
            4 => [.. bytes[..to], .. bytes[from..]],
            5 => [.. bytes[..from], .. Enumerable.Repeat((byte)"{[\"\n"[value % 4], to - from), .. bytes[from..]],
            _ => [.. bytes[from..], .. bytes[..from]],
        };
    };
}
