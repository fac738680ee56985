using System.Globalization;

namespace InspectLog.Benchmarks.Phones;

/// <summary>Phones at work on one computer: each listens to the news of its inspection, loads the bench when there are some,
/// and does something every four seconds on average. The baseline is the same bench loaded while nobody does anything.</summary>
internal static class PhonesCommand
{
    private const int Inspections = 3;
    private const int EntriesOfInspection = 1000;
    private const int IdleLoads = 60;

    /// <summary>Runs it.</summary>
    /// <param name="arguments">How many phones, 30 where none is said; how many minutes, 10 where none is said.</param>
    public static async Task<int> RunAsync(string[] arguments)
    {
        var phones = arguments is [var many, ..] ? int.Parse(many, CultureInfo.InvariantCulture) : 30;
        var minutes = arguments is [_, var length, ..] ? double.Parse(length, CultureInfo.InvariantCulture) : 10;
        var folder = Directory.CreateTempSubdirectory("inspectlog-phones-");
        try
        {
            await using var workshop = await Workshop.StartAsync(folder.FullName);
            Console.WriteLine($"Filling {Inspections} inspections with {EntriesOfInspection} entries each.");
            var benches = new List<string>();
            for (var i = 0; i < Inspections; i++)
            {
                benches.Add(await workshop.FillInspectionAsync($"Vehicle {i + 1}", EntriesOfInspection));
            }

            Console.WriteLine($"Pairing {phones} phones; ten codes a minute are let in.");
            var live = new Live();
            var crew = new List<SimulatedPhone>();
            for (var i = 0; i < phones; i++)
            {
                crew.Add(new SimulatedPhone(await workshop.PairAsync($"Person {i + 1}"), benches[i % Inspections], seed: i, live));
            }

            return await MeasureAsync(workshop, crew, live, TimeSpan.FromMinutes(minutes));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<int> MeasureAsync(Workshop workshop, List<SimulatedPhone> crew, Live live, TimeSpan length)
    {
        var idle = new Answers();
        for (var i = 0; i < IdleLoads; i++)
        {
            await crew[i % crew.Count].LoadBenchAsync(idle, CancellationToken.None);
        }

        Console.WriteLine($"Idle: {idle}");
        var busy = new Answers();
        using var end = new CancellationTokenSource(length);
        var working = crew.Select(phone => phone.WorkAsync(busy, end.Token)).ToList();
        var settled = await WatchMemoryAsync(workshop, end.Token);
        await Task.WhenAll(working);
        var (last, worker) = (workshop.ResidentMegabytes(), workshop.WorkerMegabytes());

        Console.WriteLine($"Busy: {busy}");
        Console.WriteLine($"Live: {live} (wanted: within a second).");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"A page at the 95th percentile: {busy.PageAt(0.95) / idle.PageAt(0.95):0.0} x idle (wanted: under 5)."));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Resident set of the program: {last:0} MB at the end, {last / settled:0.00} x that of minute 2 (wanted: at most 1.2); its speech worker {worker:0} MB."));
        Console.WriteLine($"Faults: {busy.Faults.Count}{string.Concat(busy.Faults.Take(10).Select(fault => $"\n  {fault}"))}");
        return busy.Faults.IsEmpty && busy.PageAt(0.95) < 5 * idle.PageAt(0.95) && last <= 1.2 * settled ? 0 : 1;
    }

    /// <summary>Says each minute how large the program is; gives what it was after two.</summary>
    private static async Task<double> WatchMemoryAsync(Workshop workshop, CancellationToken end)
    {
        var settled = double.NaN;
        try
        {
            for (var minute = 1; ; minute++)
            {
                await Task.Delay(TimeSpan.FromMinutes(1), end);
                var now = workshop.ResidentMegabytes();
                settled = minute <= 2 ? now : settled;
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Minute {minute}: {now:0} MB"));
            }
        }
        catch (OperationCanceledException)
        {
            return settled;
        }
    }
}
