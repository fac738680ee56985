using System.Text.Encodings.Web;
using System.Text.Json.Nodes;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Verification;

public sealed class JournalVerifierTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Garage _garage;
    private readonly MediaFile _photo;

    public JournalVerifierTests()
    {
        _garage = Garage.Open(_folder.Path, Some.Clock());
        _garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter));
        _photo = _garage.Media.Keep("a photo"u8, "image/jpeg");
        var recording = _garage.Media.Keep("a recording"u8, "audio/wav");
        _garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
        _garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"), new PrivateFactsNoted("Ana Lindqvist", "", ""));
        _garage.Append("teasel", Some.Technician, _ =>
        [
            new VehiclePictured(_photo),
            new RecordingKept(1, recording, 1, null),
            new PhotoKept(1, _photo, 1, 1, null, null),
        ]);
    }

    private string Teasel => _folder.At("vehicles", "teasel", "journal.jsonl");

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Garage_in_use_is_verified_whole()
    {
        var report = JournalVerifier.Verify(_folder.Path);

        Assert.True(report.IsIntact);
        Assert.Equal(
            [_folder.At("workshop.jsonl"), _folder.At("vehicles", "heron", "journal.jsonl"), Teasel],
            report.Journals.Select(journal => journal.File));
        Assert.Equal([3, 1, 5], report.Journals.Select(journal => journal.Entries));
        Assert.Equal(_garage.Entries("teasel")[^1].Hash, report.Journals[2].LastHash);
        Assert.Equal(
            [(3L, MediaCondition.Whole), (4L, MediaCondition.Whole)],
            report.Journals[2].Media!.Select(media => (media.Sequence, media.Condition)));
        Assert.Equal(6, _garage.Note("teasel", "and the garage is none the wiser").NextSequence - 1);
    }

    [Fact]
    public void Folder_of_one_vehicle_and_single_file_can_be_verified()
    {
        Assert.Equal(5, Assert.Single(JournalVerifier.Verify(_folder.At("vehicles", "teasel")).Journals).Entries);
        Assert.Equal(5, Assert.Single(JournalVerifier.Verify(Teasel).Journals).Entries);
        Assert.NotNull(JournalVerifier.Verify(Teasel).Journals[0].Media);
    }

    [Fact]
    public void Journal_away_from_its_media_is_verified_and_says_that_they_were_not_looked_at()
    {
        using var elsewhere = new TempFolder();
        File.Copy(Teasel, elsewhere.At("copy.jsonl"));

        var report = JournalVerifier.Verify(elsewhere.At("copy.jsonl"));

        Assert.True(report.IsIntact);
        Assert.Null(report.Journals[0].Media);
    }

    [Fact]
    public void First_broken_line_is_told_with_its_reason()
    {
        File.WriteAllText(Teasel, File.ReadAllText(Teasel).Replace("Ana", "Eva", StringComparison.Ordinal));

        var report = JournalVerifier.Verify(_folder.Path);

        Assert.False(report.IsIntact);
        Assert.Equal((2, "its body was changed", false), Broken(report.Journals[2]));
        Assert.Equal(4, report.Journals[2].Entries);
        Assert.True(report.Journals[1].IsIntact);
    }

    [Fact]
    public void Line_that_stays_unfinished_is_told()
    {
        File.AppendAllText(Teasel, "{\"act");

        var report = JournalVerifier.Verify(Teasel);

        Assert.False(report.IsIntact);
        Assert.Equal((6, "it is not JSON", true), Broken(report.Journals[0]));
    }

    [Fact]
    public void Line_that_is_being_written_gets_a_second_look()
    {
        var whole = File.ReadAllBytes(Teasel);
        File.WriteAllBytes(Teasel, whole[..^100]);

        var scan = ReadOnlyScan.Of(Teasel, wait: () => File.WriteAllBytes(Teasel, whole));

        Assert.Null(scan.Broken);
        Assert.Equal(5, scan.Entries.Count);
    }

    [Fact]
    public void Journal_that_ends_with_a_whole_line_needs_no_second_look()
    {
        var waits = 0;

        ReadOnlyScan.Of(Teasel, wait: () => waits++);

        Assert.Equal(0, waits);
    }

    [Fact]
    public void Withheld_bodies_are_counted_and_verify()
    {
        var lines = File.ReadAllLines(Teasel);
        var entry = JsonNode.Parse(lines[1])!.AsObject();
        entry.Remove("body");
        entry.Remove("salt");
        lines[1] = entry.ToJsonString(new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        File.WriteAllLines(Teasel, lines);

        var report = JournalVerifier.Verify(Teasel);

        Assert.True(report.IsIntact);
        Assert.Equal((5, 1, 0), (report.Journals[0].Entries, report.Journals[0].Withheld.Count, report.Journals[0].Unread));
    }

    [Fact]
    public void Missing_and_damaged_media_are_told()
    {
        var path = ((MediaStore)_garage.Media).PathOf(_photo.Sha256)!;
        File.WriteAllText(path, "a ph0to");
        Assert.Equal(MediaCondition.Damaged, JournalVerifier.Verify(Teasel).Journals[0].Media![0].Condition);

        File.Delete(path);
        var report = JournalVerifier.Verify(_folder.Path);

        Assert.False(report.IsIntact);
        Assert.Equal(
            [(_photo, MediaCondition.Missing)],
            report.Journals.SelectMany(journal => journal.Media!).Where(media => media.Condition != MediaCondition.Whole)
                .Select(media => (media.File, media.Condition)));
    }

    [Fact]
    public void Place_without_a_journal_is_refused()
    {
        using var empty = new TempFolder();

        Assert.Throws<FileNotFoundException>(() => JournalVerifier.Verify(empty.Path));
        Assert.Throws<FileNotFoundException>(() => JournalVerifier.Verify(empty.At("nowhere")));
    }

    private static (long, string, bool) Broken(JournalReport journal) =>
        (journal.Damage[0].Line, journal.Damage[0].Reason, journal.Damage[0].IsUnfinished);
}
