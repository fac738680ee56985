using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Verification;

/// <summary>A data folder that lacks something of what is noted, or all of a sort.</summary>
public sealed class FolderCheckTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public FolderCheckTests()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
        garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
        var photo = garage.Media.Keep("a photo"u8, "image/jpeg");
        garage.Append("teasel", Some.Technician, _ => [new VehiclePictured(photo)]);
        var number = garage.StartInspection("teasel");
        garage.Append("teasel", Some.Technician, _ => [new InspectionClosed(number)]);
    }

    private string Teasel => _folder.At("vehicles", "teasel", "journal.jsonl");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Whole_folder_is_whole()
    {
        var report = Verify();

        Assert.True(report.IsIntact);
        Assert.Equal((2, 0, false), (report.Folder!.Noted, report.Folder.Losses.Count, report.Folder.IsMediaMissing));
        Assert.Null(JournalVerifier.Verify(Teasel, _ => true).Folder);
    }

    [Fact]
    public void Missing_vehicle_is_told_and_every_other_result_too()
    {
        Directory.Delete(_folder.At("vehicles", "teasel"), recursive: true);

        AssertLost(("teasel", null));
        Assert.Equal(2, Verify().Journals.Count(journal => journal.IsIntact));
    }

    [Fact]
    public void Missing_journal_is_told_and_every_other_result_too()
    {
        File.Delete(Teasel);

        AssertLost(("teasel", null));
        Assert.Equal([true, true, false], Verify().Journals.Select(journal => journal.IsIntact));
        Assert.NotNull(Verify().Journals[2].Unreadable);
    }

    [Fact]
    public void Unreadable_journal_is_told_and_every_other_result_too()
    {
        File.Delete(Teasel);
        File.CreateSymbolicLink(Teasel, Teasel);

        Assert.Equal([true, true, false], Verify().Journals.Select(journal => journal.IsIntact));
    }

    [Fact]
    public void Empty_journal_is_told()
    {
        File.WriteAllText(Teasel, "");

        AssertLost(("teasel", null));
    }

    [Fact]
    public void Journal_cut_at_a_lines_end_is_told()
    {
        File.WriteAllLines(Teasel, File.ReadAllLines(Teasel)[..^1]);

        AssertLost(("teasel", 4));
    }

    [Fact]
    public void Journal_written_anew_with_hashes_of_its_own_is_told()
    {
        using var other = new TempFolder();
        using (var garage = Garage.Open(other.Path, Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
            garage.Append("teasel", Some.Technician, _ => Some.OneOfEachKind);
        }

        File.Copy(other.At("vehicles", "teasel", "journal.jsonl"), Teasel, overwrite: true);

        Assert.Contains(Verify().Folder!.Losses, loss => loss.VehicleId == "teasel" && loss.Found > loss.Entries);
    }

    [Fact]
    public void Journal_of_another_vehicle_in_place_is_told()
    {
        File.Copy(_folder.At("vehicles", "heron", "journal.jsonl"), Teasel, overwrite: true);

        AssertLost(("teasel", 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Workshops_journal_that_was_cut_is_told(int lines)
    {
        var path = _folder.At("workshop.jsonl");
        File.WriteAllLines(path, File.ReadAllLines(path)[..lines]);

        Assert.Contains(Verify().Folder!.Losses, loss => loss.VehicleId is null);
        Assert.False(Verify().IsIntact);
    }

    [Fact]
    public void Workshops_journal_that_is_missing_is_told()
    {
        File.Delete(_folder.At("workshop.jsonl"));

        AssertLost((null, null));
    }

    [Fact]
    public void Missing_folder_of_media_is_told()
    {
        Directory.Delete(_folder.At("media"), recursive: true);

        var report = Verify();

        Assert.True(report.Folder!.IsMediaMissing);
        Assert.False(report.IsIntact);
        Assert.Equal(MediaCondition.Missing, Assert.Single(report.Journals[2].Media!).Condition);
    }

    [Fact]
    public void Loss_a_person_goes_on_without_is_not_told_any_more()
    {
        Directory.Delete(_folder.At("vehicles", "teasel"), recursive: true);
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.Accept(Some.Technician, Assert.Single(garage.Losses));
        }

        Assert.True(Verify().IsIntact);
    }

    [Fact]
    public void Folder_from_before_notes_verifies_as_ever_and_says_that_nothing_is_noted()
    {
        var report = JournalVerifier.Verify(Path.GetDirectoryName(TestData.PathOf("before-amendments/workshop.jsonl"))!, _ => true);

        Assert.True(report.IsIntact);
        Assert.Null(report.Folder!.Noted);
    }

    private VerificationReport Verify() => JournalVerifier.Verify(_folder.Path, _ => true);

    private void AssertLost(params (string? Vehicle, long? Found)[] losses)
    {
        Assert.Equal(losses, Verify().Folder!.Losses.Select(loss => (loss.VehicleId, loss.Found)));
        Assert.False(Verify().IsIntact);
    }
}
