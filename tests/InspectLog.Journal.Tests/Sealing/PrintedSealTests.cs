using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

public sealed class PrintedSealTests : IDisposable
{
    private readonly SealKey _key = SealKey.Make();

    public void Dispose() => _key.Dispose();

    [Fact]
    public void Text_of_the_code_is_read_back_however_it_was_copied()
    {
        var printed = Printed(SomeSeals.Journal(6).Withholding(2));

        foreach (var text in new[] { printed.Text, printed.Text.ToLowerInvariant(), printed.Text.Replace(" ", "\n", StringComparison.Ordinal), $" {printed.Text} " })
        {
            Assert.Equal(printed with { Key = printed.Key![..32] }, PrintedSeal.Read(text));
        }

        Assert.Equal(printed with { Key = null }, PrintedSeal.Read((printed with { Key = null }).Text));
        Assert.Matches("^[0-9A-Z -]+$", printed.Text); // what the small alphabet of QR codes holds
    }

    [Theory]
    [InlineData("")]
    [InlineData("INSPECTLOG SEAL 2 MARIGOLD 6 {0} -")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD 0 {0} -")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD -6 {0} -")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD 6 {0}")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD 6 {0}0 -")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD 6 {0} 1234")]
    [InlineData("INSPECTLOG SEAL 1 MARIGOLD 6 {0} - -")]
    public void Other_text_is_no_code_of_a_report(string text) =>
        Assert.Null(PrintedSeal.Read(text.Replace("{0}", new string('A', 64), StringComparison.Ordinal)));

    [Fact]
    public void Page_finds_what_a_seal_finds()
    {
        var journal = SomeSeals.Journal(6);
        var printed = Printed(journal.Chain());

        Assert.Equal(SealStanding.Current, printed.Compare(journal.Chain()).Standing);
        Assert.Equal(SealStanding.Continued, printed.Compare(SomeSeals.After(journal, new NoteWritten(0, null, "Later")).Chain()).Standing);
        Assert.Equal(SealStanding.Cut, printed.Compare(journal.GetRange(0, 5).Chain()).Standing);
        Assert.Equal(SealStanding.Rewritten, printed.Compare(SomeSeals.After(journal.GetRange(0, 5), new NoteWritten(0, null, "Not so")).Chain()).Standing);
        Assert.Equal(SealStanding.Rewritten, printed.Compare(SomeSeals.Journal(9, "Teasel").Chain()).Standing);
        Assert.Equal([2, 4], printed.Compare(journal.Withholding(2, 4)).WithheldSince);
        Assert.Equal(SealStanding.Unknown, printed.Compare(JournalChain.Of(journal.GetRange(0, 3), isDamaged: true)).Standing);
    }

    private PrintedSeal Printed(JournalChain chain) => PrintedSeal.Of(SignedSeal.Sign(SomeSeals.Of(chain), _key));
}
