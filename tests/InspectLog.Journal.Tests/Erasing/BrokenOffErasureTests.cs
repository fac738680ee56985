using System.Globalization;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Erasing;

/// <summary>Erasures that are broken off, by a disk that fails or is full at any act and by a kill before any: what is there is
/// the folder of before, or after the next start nothing of the person.</summary>
public sealed class BrokenOffErasureTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public BrokenOffErasureTests() => SomePerson.Make(_folder.At("made"));

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(FaultyDisk.NoSpace, false)]
    [InlineData(FaultyDisk.InputOutputError, true)]
    public void Disk_that_is_full_or_fails_at_any_act_leaves_all_or_nothing(int error, bool forGood)
    {
        var (refused, begun) = (0, 0);
        for (var act = 1; ; act++)
        {
            var data = Copied(act);
            var disk = new FaultyDisk();
            Exception? failed;
            using (var garage = Garage.Open(data, Some.Clock(), disk))
            {
                _ = forGood ? disk.ArmForGood(act, 0.5, error) : disk.Arm(act, error);
                failed = Xunit.Record.Exception(() => garage.Erase("Office", SomePerson.Request));
                if (failed is IOException)
                {
                    Assert.Throws<JournalReadOnlyException>(() => garage.Note("marigold", "Not now"));
                }
            }

            if (failed is null)
            {
                break;
            }

            var wasBegun = PendingErasure.IsIn(data);
            Assert.Equal(wasBegun, failed is IOException);
            Assert.Contains(wasBegun ? "Start InspectLog again" : "Nothing was erased", failed.Message, StringComparison.Ordinal);
            (refused, begun) = wasBegun ? (refused, begun + 1) : (refused + 1, begun);
            IsAllOrNothing(data, isToBeDone: wasBegun);
        }

        Assert.True(refused > 5, $"{refused} refused");
        Assert.True(begun > 5, $"{begun} begun");
    }

    [Theory]
    [InlineData("{")]
    [InlineData("""{"moves":null,"media":[],"files":[]}""")]
    [InlineData("""{"moves":[],"media":[],"files":["../kept.txt"]}""")]
    [InlineData("""{"moves":[{"staged":"","to":"vehicles/../../kept.txt"}],"media":[],"files":[]}""")]
    [InlineData("""{"moves":[{"staged":"../kept.txt","to":"workshop.jsonl"}],"media":[],"files":[]}""")]
    [InlineData("""{"moves":[],"media":["../../kept.txt"],"files":[]}""")]
    public void List_that_is_damaged_or_leads_elsewhere_is_not_followed_and_closes_nothing(string list)
    {
        var data = Copied(0);
        var outside = Path.Combine(Path.GetDirectoryName(data)!, "kept.txt");
        File.WriteAllText(outside, "not of this folder");
        File.WriteAllText(Path.Combine(data, PendingErasure.ListName), list);
        Assert.False(JournalVerifier.Verify(data, _ => true).IsIntact);

        using (var garage = Garage.Open(data, Some.Clock()))
        {
            Assert.Contains(garage.Problems, problem => problem.Message.Contains("Erase the person once more", StringComparison.Ordinal));
            garage.Note("marigold", "Work goes on");
            garage.Erase("Office", SomePerson.Request);
        }

        Assert.Equal("not of this folder", File.ReadAllText(outside));
        Assert.False(PendingErasure.IsIn(data));
        Assert.Empty(SomePerson.Remains(data));
        Assert.True(JournalVerifier.Verify(data, _ => true).IsIntact);
    }

    [Fact]
    [Trait("Takes", "long")]
    public async Task Kill_before_any_act_leaves_all_or_nothing()
    {
        var (before, after) = (0, 0);
        for (var act = 1; ; act++)
        {
            var data = Copied(act);
            using var process = OtherProcess.Start("erase-until-killed", data);
            var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            if (output.Contains("done", StringComparison.Ordinal))
            {
                break;
            }

            var isBegun = PendingErasure.IsIn(data);
            (before, after) = isBegun ? (before, after + 1) : (before + 1, after);
            if (!isBegun && SomePerson.Remains(data).Count == 0)
            {
                Assert.True(JournalVerifier.Verify(data, _ => true).IsIntact);
                continue; // killed before the last act, when all was done
            }

            Assert.Equal(!isBegun, JournalVerifier.Verify(data, _ => true).IsIntact);
            IsAllOrNothing(data, isBegun);
        }

        Assert.True(before > 5, $"{before} before");
        Assert.True(after > 5, $"{after} after");
    }

    [Fact]
    public void Folder_that_is_only_looked_at_says_that_it_is_not_done()
    {
        var data = Copied(1);
        var disk = new FaultyDisk();
        using (var garage = Garage.Open(data, Some.Clock(), disk))
        {
            for (var act = 1; !PendingErasure.IsIn(data); act++)
            {
                _ = disk.Arm(act);
                Assert.NotNull(Xunit.Record.Exception(() => garage.Erase("Office", SomePerson.Request)));
            }
        }

        using (var looked = Garage.OpenToLook(data, Some.Clock()))
        {
            Assert.Contains(looked.Problems, problem => problem.Message.Contains("is not done", StringComparison.Ordinal));
        }

        Assert.True(JournalVerifier.Verify(data, _ => true).Folder!.IsErasureUnfinished);
        IsAllOrNothing(data, isToBeDone: true);
    }

    private static void IsAllOrNothing(string data, bool isToBeDone)
    {
        using (var garage = Garage.Open(data, Some.Clock()))
        {
            Assert.Equal(isToBeDone, garage.Problems.Any(problem => problem.Message.Contains("gone on with at this start", StringComparison.Ordinal)));
            if (!isToBeDone)
            {
                Assert.NotNull(garage.FindVehicle("marigold")!.Private);
                Assert.Empty(garage.FindVehicle("marigold")!.Withheld);
                garage.Erase("Office", SomePerson.Request);
            }
        }

        Assert.Empty(SomePerson.Remains(data));
        Assert.False(PendingErasure.IsIn(data));
        Assert.False(Directory.Exists(Path.Combine(data, PendingErasure.FolderName)));
        Assert.True(JournalVerifier.Verify(data, _ => true).IsIntact);
    }

    private string Copied(int act)
    {
        var to = _folder.At("tried", act.ToString(CultureInfo.InvariantCulture));
        foreach (var file in Directory.GetFiles(_folder.At("made"), "*", SearchOption.AllDirectories))
        {
            var place = Path.Combine(to, Path.GetRelativePath(_folder.At("made"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.Copy(file, place);
        }

        return to;
    }
}
