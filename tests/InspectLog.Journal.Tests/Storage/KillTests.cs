using System.Globalization;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>A process that appends is killed without warning, a hundred times at random moments.</summary>
[Trait("Takes", "long")]
public sealed class KillTests(ITestOutputHelper output)
{
    private const int Folders = 5;
    private const int KillsEach = 20;

    [Fact]
    public async Task Hundred_kills_during_appends_lose_nothing_acknowledged()
    {
        var random = new Random(20261125);
        var (acknowledged, cutShort) = (0, 0);
        for (var n = 0; n < Folders; n++)
        {
            using var folder = new TempFolder();
            for (var kill = 0; kill < KillsEach; kill++)
            {
                var said = await SaidUntilKilled(
                    folder.Path, random.Next(20), TimeSpan.FromMilliseconds(random.Next(20)));

                using var garage = Garage.Open(folder.Path, TimeProvider.System);
                Assert.DoesNotContain(garage.Problems, problem => problem.ReadOnly);
                Assert.All(said, line => Assert.Equal(
                    line.Hash, garage.Entries(line.Vehicle).ElementAtOrDefault(line.Sequence - 1)?.Hash));
                AssertRecordingsAreWhole(garage);
                acknowledged += said.Count;
                cutShort += garage.Problems.Count;
            }
        }

        output.WriteLine($"{Folders * KillsEach} kills, {acknowledged} entries acknowledged, {cutShort} writes cut short");
        Assert.True(acknowledged > 500, "the other process hardly got to append anything");
    }

    private static void AssertRecordingsAreWhole(Garage garage)
    {
        foreach (var vehicle in garage.Vehicles())
        {
            var recordings = garage.Entries(vehicle.Id).Select(entry => entry.Body).OfType<RecordingKept>();
            Assert.All(recordings, kept => Assert.Equal(MediaCondition.Whole, garage.Media.Check(kept.Media)));
        }
    }

    /// <summary>Kills the process a moment after it has said a number of things, so that a slow machine lets it get
    /// as far as a fast one.</summary>
    private static async Task<List<(string Vehicle, int Sequence, string Hash)>> SaidUntilKilled(
        string folder, int lines, TimeSpan after)
    {
        using var process = OtherProcess.Start("append-until-killed", folder);
        Assert.Equal(AppendUntilKilled.Opened, await process.StandardOutput.ReadLineAsync(Cancelled));
        var said = new List<string>();
        for (var n = 0; n < lines; n++)
        {
            said.Add(await process.StandardOutput.ReadLineAsync(Cancelled) ?? "");
        }

        await Task.Delay(after, Cancelled);
        process.Kill();
        var last = await process.StandardOutput.ReadToEndAsync(Cancelled);
        await process.WaitForExitAsync(Cancelled);
        return [.. said.Concat(last.Split('\n').SkipLast(1)).Select(Parse)]; // without its end a line was not said
    }

    private static (string, int, string) Parse(string line)
    {
        var parts = line.Split(' ');
        return (parts[0], int.Parse(parts[1], CultureInfo.InvariantCulture), parts[2]);
    }

    private static CancellationToken Cancelled => TestContext.Current.CancellationToken;
}
