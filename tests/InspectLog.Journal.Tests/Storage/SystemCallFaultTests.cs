using System.Globalization;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>Each call of the system that one inspection makes on its data folder is answered with an error once: nothing
/// acknowledged is lost, and the process tells it and ends in good order. INSPECTLOG_FAULTS=all takes every call, else a few are
/// drawn; INSPECTLOG_SEED draws others.</summary>
[Trait("Takes", "long")]
public sealed class SystemCallFaultTests(ITestOutputHelper output)
{
    private const string Strace = "/usr/bin/strace";
    private const int AtEachRun = 12;
    private const int UsualSeed = 20261201;

    private static readonly string[] Errors = ["EIO", "ENOSPC"];

    [Fact]
    public async Task Error_at_any_call_of_the_system_loses_nothing_acknowledged()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "strace is a Linux program.");
        Assert.True(File.Exists(Strace), "This test needs strace: apt-get install strace");
        var calls = await CallsOfOneInspection();
        output.WriteLine(string.Join(", ", calls.CountBy(call => call.Name).Select(kind => $"{kind.Key} {kind.Value}")));
        Assert.Superset(new HashSet<string> { "fsync", "pwrite64", "openat", "rename" }, calls.Select(call => call.Name).ToHashSet());

        var all = (from call in calls from error in Errors select (call, error)).ToArray();
        var seed = int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_SEED"), CultureInfo.InvariantCulture, out var set) ? set : UsualSeed;
        output.WriteLine($"seed {seed}");
        new Random(seed).Shuffle(all);
        var (tried, refused, lost) = (0, 0, new List<string>());
        foreach (var (call, error) in Environment.GetEnvironmentVariable("INSPECTLOG_FAULTS") == "all" ? all : all[..AtEachRun])
        {
            var (happened, told, missing) = await With(call, error);
            tried += happened ? 1 : 0;
            refused += told ? 1 : 0;
            lost.AddRange(missing.Select(what => $"{call.Name} {call.Nth} {error}: {what}"));
        }

        output.WriteLine($"{tried} errors injected, {refused} of them told");
        Assert.Empty(lost);
        Assert.True(tried > 0, "no error was injected");
    }

    private static async Task<IReadOnlyList<SystemCall>> CallsOfOneInspection()
    {
        using var folder = new TempFolder();
        await OtherProcess.Run("one-inspection", folder.At("data"), Strace, "-y", "-o", folder.At("trace"), "-e", "trace=%file,%desc");
        return SystemCalls.On(folder.At("data"), await File.ReadAllLinesAsync(folder.At("trace"), Cancelled));
    }

    private static async Task<(bool Happened, bool Told, IReadOnlyList<string> Missing)> With(SystemCall call, string error)
    {
        using var folder = new TempFolder();
        var inject = string.Create(CultureInfo.InvariantCulture, $"inject={call.Name}:error={error}:when={call.Nth}");
        var said = await OtherProcess.Run(
            "one-inspection", folder.At("data"), Strace, "-y", "-o", folder.At("trace"), "-e", $"trace={call.Name}", "-e", inject);

        // Another run may do a little more or less before: what counts is where the error fell.
        var trace = await File.ReadAllLinesAsync(folder.At("trace"), Cancelled);
        var happened = trace.Any(line => line.Contains("(INJECTED)", StringComparison.Ordinal) && line.Contains(folder.At("data"), StringComparison.Ordinal));
        var kept = new SaidKept();
        foreach (var line in said.Split('\n'))
        {
            kept.Add(line);
        }

        using var garage = Garage.Open(folder.At("data"), TimeProvider.System);
        return (happened, said.Contains("refused: ", StringComparison.Ordinal),
            [.. garage.Problems.Where(problem => problem.ReadOnly).Select(problem => problem.Message), .. kept.MissingIn(garage)]);
    }

    private static CancellationToken Cancelled => TestContext.Current.CancellationToken;
}
