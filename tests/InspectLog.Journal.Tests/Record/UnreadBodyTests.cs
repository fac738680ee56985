using System.Text;
using InspectLog.Journal.Record;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Record;

/// <summary>Bodies that were withheld, and those of a later program.</summary>
public sealed class UnreadBodyTests
{
    [Fact]
    public void Withheld_body_leaves_the_chain_whole()
    {
        var lines = Lines();
        lines[3] = Without(lines[3], "body", "salt");

        var scan = JournalScan.Of(Join(lines));

        Assert.Null(scan.Broken);
        Assert.Equal(Hashes, scan.Entries.Select(entry => entry.Hash));
        Assert.True(scan.Entries[3].IsWithheld);
        Assert.Null(scan.Entries[3].Body);
        Assert.Null(scan.Entries[3].UnreadBody);
        Assert.Equal("private-facts", scan.Entries[3].Kind);
        Assert.DoesNotContain("Lindqvist", Encoding.UTF8.GetString(Join(lines)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("body")]
    [InlineData("salt")]
    public void Half_of_a_withheld_body_is_damage(string member)
    {
        var lines = Lines();
        lines[3] = Without(lines[3], member);

        AssertDamagedAt(4, Join(lines), "its body and its salt must be there both or neither");
    }

    [Fact]
    public void Entry_of_a_kind_from_a_later_program_is_kept_to_be_shown()
    {
        var lines = Lines().Take(2).ToList();
        lines.Add(LineOfAnotherProgram(3, "smell-noted", 4, """{"smell":"petrol"}""", Hashes[1]));

        var scan = JournalScan.Of(Join(lines));

        Assert.Null(scan.Broken);
        Assert.Null(scan.Entries[2].Body);
        Assert.False(scan.Entries[2].IsWithheld);
        Assert.Equal("""{"smell":"petrol"}""", scan.Entries[2].UnreadBody);
        Assert.Equal(("smell-noted", 4), (scan.Entries[2].Kind, scan.Entries[2].Version));
    }
}
