using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Record;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Verification;

/// <summary>The head on a paper against the journal it was printed of.</summary>
public sealed class HeadComparisonTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>The recipe of FORMAT.md, spelled out.</summary>
    [Fact]
    public void Head_is_what_the_recipe_gives()
    {
        var hash = new string('a', 64);
        var recipe = "{\"count\":3,\"head\":\"" + hash + "\",\"withheld\":[1,3]}";

        Assert.Equal(recipe, Encoding.UTF8.GetString(CanonicalJson.Of(Encoding.UTF8.GetBytes(recipe))));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(recipe))), RecordHead.Of(3, hash, [1, 3]));
    }

    [Fact]
    public void Head_of_any_entry_is_found_and_says_how_many_came_later()
    {
        var journal = Report(Lines());

        Assert.Equal(new(Hashes.Length, 0, []), Same(journal.Find(journal.Head)));
        Assert.Equal(new(9, Hashes.Length - 9, []), Same(journal.Find(RecordHead.Of(9, Hashes[8], []))));
    }

    [Fact]
    public void What_was_withheld_since_is_named_and_is_no_match()
    {
        var paper = Report(Lines()).Head;
        var lines = Lines();
        foreach (var at in new[] { 11, 14 })
        {
            lines[at] = Without(lines[at], "body", "salt");
        }

        var found = Report(lines).Find(paper)!;

        Assert.True(Report(lines).IsIntact);
        Assert.False(found.IsMatch);
        Assert.Equal([12, 15], found.WithheldSince);
    }

    [Fact]
    public void What_was_withheld_when_it_was_printed_may_be_so()
    {
        var lines = Lines();
        lines[3] = Without(lines[3], "body", "salt");

        var paper = Report(lines[..20]).Head;

        Assert.NotEqual(RecordHead.Of(20, Hashes[19], []), paper);
        Assert.True(Report(lines).Find(paper)!.IsMatch);
    }

    [Fact]
    public void Journal_cut_short_or_written_anew_has_no_entry_with_the_head()
    {
        var paper = Report(Lines()).Head;
        var anew = new List<string>();
        foreach (var body in Some.OneOfEachKind)
        {
            anew.Add(Encoding.UTF8.GetString(EntryLine.Write(
                anew.Count + 1, Some.Clock().GetLocalNow(), Some.Technician, body,
                anew.Count == 0 ? EntryLine.NoPrevious : EntryLine.Read(Encoding.UTF8.GetBytes(anew[^1])).Hash, EntryLine.NewSalt())));
        }

        Assert.Null(Report(Lines()[..^1]).Find(paper));
        Assert.True(Report(anew).IsIntact);
        Assert.Null(Report(anew).Find(paper));
    }

    [Fact]
    public void Damaged_journal_has_the_head_of_what_can_be_read_and_is_not_said_to_be_that_of_a_paper()
    {
        var lines = Lines();
        lines[5] = "{}";

        Assert.Equal(RecordHead.Of(Hashes.Length, Hashes[^1], []), Report(lines).Head);
        Assert.Null(Report(lines).Find(Report(Lines()).Head));
    }

    private static HeadComparison Same(HeadComparison? found) => found! with { WithheldSince = [] };

    private JournalReport Report(IReadOnlyList<string> lines)
    {
        var path = _folder.At("journal.jsonl");
        File.WriteAllBytes(path, Join(lines));
        return JournalVerifier.Verify(path).Journals[0];
    }
}
