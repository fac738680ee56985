using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Verification;
using InspectLog.Measuring;
using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Verifying;

/// <summary>Times the verifying of a long journal against <c>sha256sum</c> on the same bytes, turn by turn in one run.</summary>
internal static class VerifyCommand
{
    private const int Rounds = 7;
    private const int EntriesAtOnce = 1_000;

    /// <summary>Runs it.</summary>
    /// <param name="arguments">How many entries; 100,000 where none is said.</param>
    public static int Run(string[] arguments)
    {
        var count = arguments is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : 100_000;
        var folder = Directory.CreateTempSubdirectory("inspectlog-verify-").FullName;
        try
        {
            var journal = Fill(folder, count);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{count} entries, {new FileInfo(journal).Length / 1e6:0.0} MB; best of {Rounds} turns each"));
            var rounds = Enumerable.Range(0, Rounds).Select(_ => (Sum: TimeSum(journal), Verify: TimeVerify(journal))).ToList();
            var (sum, verify) = (rounds.Min(round => round.Sum), rounds.Min(round => round.Verify.Wall));
            Tell("sha256sum, started anew each time", sum);
            Tell("verify, in this process", verify);
            Tell("  of processor time, all cores", rounds.Min(round => round.Verify.Processor));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"verify takes {verify / sum:0.00} times as long as sha256sum"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static TimeSpan TimeSum(string journal)
    {
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo("sha256sum", [journal]) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? watch.Elapsed : throw new InvalidOperationException("sha256sum failed.");
    }

    private static (TimeSpan Wall, TimeSpan Processor) TimeVerify(string journal)
    {
        var before = Environment.CpuUsage.TotalTime;
        var watch = Stopwatch.StartNew();
        var report = JournalVerifier.Verify(journal);
        var wall = watch.Elapsed;
        return report.IsIntact ? (wall, Environment.CpuUsage.TotalTime - before) : throw new InvalidOperationException("The journal is not intact.");
    }

    /// <summary>One vehicle, whose journal holds readings, notes and observations as a bench writes them.</summary>
    private static string Fill(string folder, int count)
    {
        using var garage = Garage.Open(folder, TimeProvider.System);
        var id = garage.AddVehicle("Tess Okafor", new VehicleAdded("Marigold", "1968 saloon", null));
        for (var made = 0; made < count; made += EntriesAtOnce)
        {
            garage.Append(id, "Tess Okafor", now =>
            [
                .. Enumerable.Range(made, EntriesAtOnce).Select(n => Body(1, n) with
                {
                    Stamp = new($"3f2c-{n:x8}.9ab0c1d2e3f4", new(2026, 11, 25, 10, 30, 0, TimeSpan.Zero)),
                }),
            ]);
        }

        return Path.Combine(folder, "vehicles", id, "journal.jsonl");
    }

    private static EntryBody Body(long inspection, int n) => (n % 4) switch
    {
        0 => new NoteWritten(inspection, null, $"Lead {n % 6 + 1} chafed where it crosses the bracket, and 30 °C under the bonnet. Note {n}."),
        1 => new ObservationMade(inspection, "plug-condition", n % 6 + 1, "burnt", false, null),
        _ => new ReadingDecided(inspection, "lead-resistance", n % 6 + 1,
            new DisplayedReading([9000 + n % 500, 9010 + n % 500], new(0.8, 3), 10), "9k",
            new("meter-1", "Bench meter", QuantityKind.Resistance, new(0.8, 3), 0.1),
            new(4000, 12000, "common practice, no source", "non-binary"),
            new(9005 + n % 500, 58.25 / (n % 7 + 1), 116.5 / (n % 7 + 1), 2, 1 - 1.0 / (n + 3), Decision.Pass,
                [new("Accuracy", 58.2 / (n % 9 + 1), double.PositiveInfinity), new("Repeats", 5, 1)]),
            []),
    };

    private static void Tell(string what, TimeSpan time) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {time.TotalMilliseconds:0} ms"));
}
