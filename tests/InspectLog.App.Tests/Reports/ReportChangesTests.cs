using InspectLog.App.Reports;
using InspectLog.App.Tests.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Reports;

/// <summary>What was put right after closing is marked where it stands; what was put right before is not the reader's
/// concern.</summary>
public sealed class ReportChangesTests
{
    private const string Coil = "coil-secondary-resistance";

    private static readonly EntryBody Reading = Written.Reading(Coil, 8400);
    private static readonly EntryBody Right = Written.Reading(Coil, 9400) with { Amends = 3 };
    private static readonly EntryBody Close = new InspectionClosed(Written.Inspection);

    [Fact]
    public void Reading_put_right_after_closing_says_what_it_was()
    {
        var line = Assert.Single(Lines(Reading, Close, Right));

        Assert.StartsWith("9.400", line.Text, StringComparison.Ordinal);
        Assert.Equal("Put right on 4 March 2026 by Tess Okafor: was 8.400\u00a0kΩ.", line.PutRight);
    }

    [Fact]
    public void Reading_put_right_before_closing_stands_in_the_history_alone()
    {
        var report = Report(Reading, Right, Close);

        Assert.Equal("", Assert.Single(Lines(Reading, Right, Close)).PutRight);
        Assert.StartsWith("Coil secondary: put right on 4 March 2026 by Tess Okafor: was 8.400", Assert.Single(report.PutRight), StringComparison.Ordinal);
    }

    [Fact]
    public void Record_withdrawn_after_closing_is_named_and_counts_no_more()
    {
        var report = Report(Reading, Close, new EntryWithdrawn(3, "misread"));

        var check = report.Checks.Single(one => one.Check.Id == Coil);
        Assert.Equal("Withdrawn on 4 March 2026 by Tess Okafor: coil secondary, 8.400\u00a0kΩ (misread).", Assert.Single(check.Withdrawn));
        Assert.Equal(ReportSectionKind.NotDone, check.Section);
        Assert.Empty(report.Instruments);
    }

    [Fact]
    public void Record_that_counts_again_since_closing_says_who_undid_its_withdrawal()
    {
        EntryBody[] entries = [Reading, new EntryWithdrawn(3, "misread"), Close, new EntryRestored(3)];

        var line = Assert.Single(Lines(entries));

        Assert.Equal("Withdrawn on 4 March 2026 by Tess Okafor (misread), which Tess Okafor undid on 4 March 2026.", line.PutRight);
        Assert.Empty(Report(entries).PutRight);
    }

    [Fact]
    public void Withdrawal_undone_before_closing_stands_in_the_history_alone()
    {
        EntryBody[] entries = [Reading, new EntryWithdrawn(3, "misread"), new EntryRestored(3), Close];

        Assert.Equal("", Assert.Single(Lines(entries)).PutRight);
        Assert.StartsWith("Coil secondary: withdrawn on", Assert.Single(Report(entries).PutRight), StringComparison.Ordinal);
    }

    [Fact]
    public void Observation_moved_after_closing_says_where_it_was()
    {
        var line = Assert.Single(
            Lines("cap-contacts", Written.Seen("cap-contacts", "corroded", 2), Close, Written.Seen("cap-contacts", "corroded", 3) with { Amends = 3 }));

        Assert.Equal("Tower 3", line.Places);
        Assert.EndsWith("was cap contacts, tower 2, corroded.", line.PutRight, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_a_withdrawn_note_that_was_left_out_are_not_told()
    {
        var report = Report(
            new NoteWritten(Written.Inspection, null, "Ring Ms Rowntree"), new ReportChoice(3, false), new EntryWithdrawn(3, "other"));

        Assert.Empty(report.PutRight);
        Assert.Null(report.LeftOut);
    }

    [Fact]
    public void What_is_added_later_changes_no_check()
    {
        var before = Report(Close);
        var after = Report(Close, Reading);

        Assert.Equal(before.Checks.Select(one => (one.Check.Id, one.Section)), after.Checks.Select(one => (one.Check.Id, one.Section)));
        Assert.IsType<Recorded<ReadingDecided>>(Assert.Single(after.Inspection.Addenda));
        Assert.DoesNotContain(after.Attention, line => line.Word == "Read later");
    }

    [Fact]
    public void Later_reading_that_fails_needs_attention()
    {
        var report = Report(Close, Written.Reading(Coil, 15000));

        Assert.Equal("Read later", report.Attention[0].Word);
        Assert.Contains("1 later reading needs a look", report.Summary[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Instrument_that_was_used_several_times_is_listed_once()
    {
        var instrument = Assert.Single(Report(
            Written.Reading("lead-resistance", 9000, 1), Written.Reading("lead-resistance", 9100, 2), Reading).Instruments);

        Assert.Equal(3, instrument.Readings);
        Assert.Equal(["Lead resistance", "Coil secondary"], instrument.Checks);
    }

    [Theory]
    [InlineData("Marigold", "\"Marigold\"")]
    [InlineData("A\"; } body { display: none", "\"A\\000022 \\00003B  \\00007D  body \\00007B  display\\00003A  none\"")]
    [InlineData("</style>\\\n", "\"\\00003C \\00002F style\\00003E \\00005C \\00000A \"")]
    public void Name_in_the_running_head_stays_a_text(string name, string quoted) =>
        Assert.Equal(quoted, ReportHead.Quoted(name));

    private static IReadOnlyList<ReportLine> Lines(params EntryBody[] entries) => Lines(Coil, entries);

    private static IReadOnlyList<ReportLine> Lines(string check, params EntryBody[] entries)
    {
        var report = Report(entries);
        var one = report.Checks.Single(one => one.Check.Id == check);
        return ReportLine.Of(report.Sheet, one.Check, one.Progress);
    }

    private static ReportView Report(params EntryBody[] entries) =>
        ReportBuilder.Build(Written.Scene(entries), WorkshopState.Empty, []);
}
