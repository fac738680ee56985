using InspectLog.Journal.Storage;
using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Garages;

/// <summary>Appends an entry turn by turn with writing and syncing the same bytes to a file that is held open.</summary>
internal static class AppendTimes
{
    private const int Rounds = 300;
    private const int WarmUps = 30;

    /// <summary>Runs it.</summary>
    /// <param name="folder">A garage.</param>
    /// <param name="name">What it is called.</param>
    public static void Run(string folder, string name)
    {
        using var garage = LongJournal.Open(folder);
        var id = garage.Vehicles()[0].Id;
        var inspection = garage.FindVehicle(id)!.OpenInspection!.Number;
        var journal = Path.Combine(folder, "vehicles", id, "journal.jsonl");
        using var bare = File.OpenHandle(Path.Combine(folder, "bare"), FileMode.Create, FileAccess.Write);
        var (at, appends, writes) = (0L, new List<double>(), new List<double>());
        for (var round = -WarmUps; round < Rounds; round++)
        {
            var before = new FileInfo(journal).Length;
            var start = Stopwatch.GetTimestamp();
            garage.Append(id, LongJournal.Technician, _ => [LongJournal.Reading(inspection, round + WarmUps)]);
            appends.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);

            var bytes = new byte[new FileInfo(journal).Length - before];
            start = Stopwatch.GetTimestamp();
            RandomAccess.Write(bare, bytes, at);
            DurableFiles.Sync(bare);
            writes.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            at += bytes.Length;
        }

        var (append, write) = (Median(appends[WarmUps..]), Median(writes[WarmUps..]));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Append with {name}: median {append:0.00} ms, bare write and fsync {write:0.00} ms: {append / write:0.00} x (wanted: at most 1.5)"));
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
