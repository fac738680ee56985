using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Garages;

/// <summary>What a long journal costs: starting, appending, showing pages, memory, and giving it away, each against its baseline in the same
/// run.</summary>
internal static class GarageCommand
{
    private const int Starts = 5;
    private const int Loads = 100;
    private const int WarmUps = 15;

    /// <summary>Runs it.</summary>
    /// <param name="arguments">How many entries the long journal has, 100,000 where none is said; the short one has a hundredth.
    /// Then the program, where it is not the one that was built with this.</param>
    public static async Task<int> RunAsync(string[] arguments)
    {
        var program = arguments is [_, var made, ..] ? made : null;
        var count = arguments is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : 100_000;
        var root = Directory.CreateTempSubdirectory("inspectlog-garage-").FullName;
        try
        {
            var (empty, small, large) = (Path.Combine(root, "empty"), Path.Combine(root, "small"), Path.Combine(root, "large"));
            var watch = Stopwatch.StartNew();
            LongJournal.Open(empty).Dispose();
            var smallBench = LongJournal.Make(small, Math.Max(count / 100, 2 * LongJournal.OfInspection));
            var largeBench = LongJournal.Make(large, count);
            var journal = new FileInfo(Directory.GetFiles(large, "journal.jsonl", SearchOption.AllDirectories)[0]);
            Tell($"{count} entries, {journal.Length / 1e6:0.0} MB, made in {watch.Elapsed.TotalSeconds:0} s");

            await StartsAsync(program, empty, large);
            AppendTimes.Run(small, "few entries");
            AppendTimes.Run(large, "many entries");
            await PagesAsync(program, small, smallBench, large, largeBench);
            ExportTimes.Run(program, small);
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    /// <summary>Starts turn by turn: an app that does nothing, the program on nothing, the program on much.</summary>
    private static async Task StartsAsync(string? program, string empty, string large)
    {
        var (bare, none, many) = (new List<RunningApp>(), new List<RunningApp>(), new List<RunningApp>());
        for (var round = 0; round < Starts; round++)
        {
            bare.Add(await StartedAsync(RunningApp.EmptyAsync));
            none.Add(await StartedAsync(() => RunningApp.ServeAsync(program, empty)));
            many.Add(await StartedAsync(() => RunningApp.ServeAsync(program, large)));
        }

        foreach (var (what, of) in new (string, Func<RunningApp, TimeSpan>)[] { ("until it is open", app => app.Open), ("until its first page", app => app.FirstPage), ("in processor time until then", app => app.Processor) })
        {
            var (b, n, m) = (Median(bare, of), Median(none, of), Median(many, of));
            Tell($"Start {what}: empty app {b:0} ms, program on an empty folder {n:0} ms, on the long journal {m:0} ms.");
            Tell($"  empty folder {n / b:0.00} x an empty app (wanted: at most 2); the long journal {(m - n) / 1000:0.00} s more (wanted: under 2)");
        }
    }

    private static async Task<RunningApp> StartedAsync(Func<Task<RunningApp>> start)
    {
        var app = await start();
        await app.DisposeAsync();
        return app;
    }

    private static double Median(List<RunningApp> apps, Func<RunningApp, TimeSpan> of) =>
        apps.Select(app => of(app).TotalMilliseconds).Order().ElementAt(apps.Count / 2);

    private static async Task PagesAsync(string? program, string small, string smallBench, string large, string largeBench)
    {
        await using var few = await RunningApp.ServeAsync(program, small);
        await using var many = await RunningApp.ServeAsync(program, large);
        Tell($"Resident after the first page: {few.ResidentMegabytes:0} MB with few entries, {many.ResidentMegabytes:0} MB with many");
        foreach (var (what, short_, long_) in new[]
        {
            ("vehicle", "/vehicles/marigold", "/vehicles/marigold"),
            ("garage", "/", "/"),
            ("search, few hits", "/find?words=note+191", "/find?words=note+191"),
            ("search, many hits", "/find?words=chafed", "/find?words=chafed"),
            ("bench", smallBench, largeBench),
            ("report", $"{smallBench}/report", $"{largeBench}/report"),
            ("journal", "/vehicles/marigold/journal", "/vehicles/marigold/journal"),
        })
        {
            var times = await TimesAsync(few.Client, short_, many.Client, long_);
            Tell($"Page {what}: p95 {times.Few.At:0.0} ms ({times.Few.Bytes / 1000} kB) with few entries, {times.Many.At:0.0} ms ({times.Many.Bytes / 1000} kB) with many: {times.Many.At / times.Few.At:0.00} x (wanted: at most 2)");
        }

        Tell($"Resident after all pages: {few.ResidentMegabytes:0} MB with few entries, {many.ResidentMegabytes:0} MB with many");
    }

    /// <summary>Loads a page turn by turn from both.</summary>
    private static async Task<((double At, int Bytes) Few, (double At, int Bytes) Many)> TimesAsync(
        HttpClient few, string short_, HttpClient many, string long_)
    {
        var (shortTimes, longTimes) = (new List<double>(), new List<double>());
        var (shortBytes, longBytes) = (0, 0);
        for (var load = -WarmUps; load < Loads; load++)
        {
            (var took, shortBytes) = await LoadAsync(few, short_);
            shortTimes.Add(took);
            (took, longBytes) = await LoadAsync(many, long_);
            longTimes.Add(took);
        }

        return ((P95(shortTimes[WarmUps..]), shortBytes), (P95(longTimes[WarmUps..]), longBytes));
    }

    private static async Task<(double Took, int Bytes)> LoadAsync(HttpClient client, string address)
    {
        var start = Stopwatch.GetTimestamp();
        var page = await client.GetByteArrayAsync(address);
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, page.Length);
    }

    private static double P95(List<double> times) => times.Order().ElementAt((int)(0.95 * times.Count));

    private static void Tell(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
