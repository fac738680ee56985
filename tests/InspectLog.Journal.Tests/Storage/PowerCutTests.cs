using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>The power is cut on a real ext4 file system before each write and each sync of one inspection: whatever was
/// acknowledged by then is there afterwards.</summary>
[Trait("Takes", "long")]
public sealed class PowerCutTests(ITestOutputHelper output) : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Power_cut_before_any_act_loses_nothing_acknowledged()
    {
        var (cuts, missing, kept) = await CutBeforeEachAct("one-inspection-stepped");

        output.WriteLine($"{cuts} power cuts, {kept} acknowledged");
        Assert.Empty(missing);
        Assert.True(cuts > 50, $"only {cuts} acts");
        Assert.True(kept > 10, $"only {kept} acknowledged");
    }

    /// <summary>The same without a single sync, so that the test above cannot pass for another reason.</summary>
    [Fact]
    public async Task Program_that_only_pretends_to_sync_loses_what_it_acknowledged()
    {
        var (_, missing, _) = await CutBeforeEachAct("one-inspection-unsynced");

        Assert.NotEmpty(missing);
    }

    private async Task<(int Cuts, IReadOnlyList<string> Missing, int Kept)> CutBeforeEachAct(string verb)
    {
        using var disk = LoopDisk.Make(_folder.Path);
        using var process = OtherProcess.Start(verb, disk.Path);
        var (kept, missing, cuts) = (new SaidKept(), new List<string>(), 0);
        while (await process.StandardOutput.ReadLineAsync(Cancelled) is { } line)
        {
            kept.Add(line);
            if (line == SteppedDisk.Act)
            {
                missing.AddRange(AfterPowerCut(disk, kept).Select(what => $"after {cuts} acts: {what}"));
                cuts++;
                await process.StandardInput.WriteLineAsync("go on");
            }
        }

        await process.WaitForExitAsync(Cancelled);
        Assert.Equal("", await process.StandardError.ReadToEndAsync(Cancelled));
        return (cuts, missing, kept.Count);
    }

    private IReadOnlyList<string> AfterPowerCut(LoopDisk disk, SaidKept kept)
    {
        using var left = disk.AfterPowerCut(_folder.Path);
        using var garage = Garage.Open(left.Path, TimeProvider.System);
        return [.. garage.Problems.Where(problem => problem.ReadOnly).Select(problem => problem.Message), .. kept.MissingIn(garage)];
    }

    private static CancellationToken Cancelled => TestContext.Current.CancellationToken;
}
