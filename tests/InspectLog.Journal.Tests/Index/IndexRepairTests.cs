using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>An index that cannot be used, or that breaks at work, is made again from the journals.</summary>
public sealed class IndexRepairTests : IDisposable
{
    private readonly TempFolder _folder = new();

    private string IndexFile => _folder.At("index.db");

    private string LogFile => _folder.At("index-log.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Index_made_entry_by_entry_is_the_one_made_from_the_journals()
    {
        using var garage = FilledGarage.In(_folder);
        var before = FilledGarage.Everything(garage);

        garage.RebuildIndex();

        Assert.Equal(before, FilledGarage.Everything(garage));
        Assert.NotEmpty(garage.WaitingRecordings());
    }

    [Theory]
    [InlineData("deleted")]
    [InlineData("empty")]
    [InlineData("noise")]
    [InlineData("cut in half")]
    [InlineData("a page overwritten")]
    [InlineData("not closed")]
    [InlineData("a folder")]
    [InlineData("sum missing")]
    [InlineData("sum of another")]
    public void Index_that_is_no_good_is_made_again_at_the_next_start(string state)
    {
        string before;
        using (var garage = FilledGarage.In(_folder))
        {
            before = FilledGarage.Everything(garage);
        }

        var made = File.GetCreationTimeUtc(IndexFile);
        Spoil(state);

        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Equal(before, FilledGarage.Everything(again));
        Assert.NotEqual(made, File.GetCreationTimeUtc(IndexFile));
        Assert.Equal(state == "a folder", again.Problems.Count == 1); // cannot be replaced: it works from memory
        Assert.Equal(2, again.Append("teasel", "Tess", _ => [new NoteWritten(0, null, "zebra")]).Inspections.Count);
        Assert.Single(again.Search("zebra"));
    }

    [Fact]
    public void Index_that_was_closed_in_good_order_is_used_as_it_is()
    {
        using (FilledGarage.In(_folder))
        {
            // Closed in good order.
        }

        Assert.False(File.Exists(LogFile));
        var made = File.GetCreationTimeUtc(IndexFile);

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.NotEmpty(again.Vehicles());
        Assert.Equal(made, File.GetCreationTimeUtc(IndexFile));
    }

    [Fact]
    public void Index_that_breaks_at_work_is_replaced_by_one_in_memory_and_nothing_is_refused()
    {
        string before;
        using (var filled = FilledGarage.In(_folder))
        {
            before = FilledGarage.Everything(filled);
        }

        using var garage = Garage.Open(_folder.Path, Some.Clock()); // so that nothing of the file is in LiteDB's cache
        using (var file = new FileStream(IndexFile, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite))
        {
            var noise = new byte[file.Length];
            new Random(1).NextBytes(noise);
            file.Write(noise);
        }

        Assert.Equal(before, FilledGarage.Everything(garage));
        garage.Note("teasel", "a walrus");
        Assert.Single(garage.Search("walrus"));
        Assert.False(Assert.Single(garage.Problems).ReadOnly);
        garage.RebuildIndex();
        Assert.Empty(garage.Problems);
        Assert.Single(garage.Search("walrus"));
    }

    private void Spoil(string state)
    {
        var bytes = File.ReadAllBytes(IndexFile);
        switch (state)
        {
            case "deleted":
                File.Delete(IndexFile);
                break;
            case "empty":
                File.WriteAllBytes(IndexFile, []);
                break;
            case "noise":
                new Random(1).NextBytes(bytes);
                File.WriteAllBytes(IndexFile, bytes);
                break;
            case "cut in half":
                File.WriteAllBytes(IndexFile, bytes[..(bytes.Length / 2)]);
                break;
            case "a page overwritten":
                bytes.AsSpan(8192, 8192).Fill(7);
                File.WriteAllBytes(IndexFile, bytes);
                break;
            case "not closed":
                File.WriteAllBytes(LogFile, []);
                break;
            case "sum missing":
                File.Delete(_folder.At("index.sha256"));
                break;
            case "sum of another":
                File.WriteAllText(_folder.At("index.sha256"), new string('0', 64));
                break;
            case "a folder":
                File.Delete(IndexFile);
                Directory.CreateDirectory(IndexFile);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(state));
        }
    }
}
