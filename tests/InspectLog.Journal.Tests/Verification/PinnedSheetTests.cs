using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Verification;

public sealed class PinnedSheetTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Garage _garage;
    private readonly string _sha256;

    public PinnedSheetTests()
    {
        _garage = Garage.Open(_folder.Path, Some.Clock());
        _sha256 = _garage.Sheets.Keep("a sheet"u8);
        _garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
        _garage.Append("teasel", Some.Technician, _ => [Started(), Started()]);
    }

    private string File => _folder.At("sheets", $"{_sha256}.json");

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Pinned_sheet_that_is_there_is_looked_at_once()
    {
        var report = Teasel();

        Assert.True(report.IsIntact);
        Assert.Equal([(2L, "a-sheet", MediaCondition.Whole)], Seen(report));
    }

    [Fact]
    public void Missing_sheet_is_told()
    {
        System.IO.File.Delete(File);

        var report = Teasel();

        Assert.False(report.IsIntact);
        Assert.Equal([(2L, "a-sheet", MediaCondition.Missing)], Seen(report));
    }

    [Fact]
    public void Missing_sheet_that_is_built_in_is_no_harm()
    {
        System.IO.File.Delete(File);

        var report = Teasel(sha256 => sha256 == _sha256);

        Assert.True(report.IsIntact);
        Assert.Equal([(2L, "a-sheet", MediaCondition.Whole)], Seen(report));
    }

    [Fact]
    public void Changed_file_is_told_even_where_the_sheet_is_built_in()
    {
        System.IO.File.WriteAllText(File, "another sheet");

        Assert.Equal([(2L, "a-sheet", MediaCondition.Damaged)], Seen(Teasel(_ => true)));
        Assert.False(Teasel(_ => true).IsIntact);
    }

    [Fact]
    public void Journal_away_from_its_sheets_says_that_they_were_not_looked_at_unless_they_are_built_in()
    {
        using var elsewhere = new TempFolder();
        System.IO.File.Copy(_folder.At("vehicles", "teasel", "journal.jsonl"), elsewhere.At("copy.jsonl"));

        var unknown = JournalVerifier.Verify(elsewhere.At("copy.jsonl")).Journals[0];
        var known = JournalVerifier.Verify(elsewhere.At("copy.jsonl"), _ => true).Journals[0];

        Assert.Null(unknown.Sheets);
        Assert.True(unknown.IsIntact);
        Assert.Equal([(2L, "a-sheet", MediaCondition.Whole)], Seen(known));
    }

    private JournalReport Teasel(Func<string, bool>? isBuiltIn = null) =>
        JournalVerifier.Verify(_folder.Path, isBuiltIn).Journals.Single(journal => journal.File.Contains("teasel", StringComparison.Ordinal));

    private InspectionStarted Started() => new("a-sheet", 1, _sha256, Some.Technician, null, null);

    private static IEnumerable<(long, string, MediaCondition)> Seen(JournalReport report) =>
        report.Sheets!.Select(sheet => (sheet.Sequence, sheet.Pinned.Sheet, sheet.Condition));
}
