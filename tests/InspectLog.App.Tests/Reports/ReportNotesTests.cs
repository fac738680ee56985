using InspectLog.App.Reports;
using InspectLog.App.Tests.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Reports;

/// <summary>Notes of the report: nothing said is lost, and what is private can be left out.</summary>
public sealed class ReportNotesTests
{
    private const string Words = "The owner says tower 3 was corroded";

    private static readonly ProposedFinding Finding = new(
        "observation", "cap-contacts", 3, null, null, null, "corroded", false, null, Words, 0, 35, []);

    [Fact]
    public void Spoken_note_whose_finding_was_dropped_keeps_its_words()
    {
        Assert.Equal([Words], Notes(Spoken(3, Finding), new FindingDropped(new(3, 0))));
    }

    [Fact]
    public void Spoken_note_whose_finding_was_confirmed_stands_at_its_check_alone()
    {
        Assert.Empty(Notes(
            Spoken(3, Finding), new ObservationMade(Written.Inspection, "cap-contacts", 3, "corroded", false, new(3, 0))));
    }

    [Fact]
    public void Typed_note_keeps_its_words_whatever_became_of_its_findings()
    {
        Assert.Equal([Words], Notes(
            [new NoteWritten(Written.Inspection, null, Words), new FindingsProposed(3, [Finding])], new FindingDropped(new(3, 0))));
    }

    [Fact]
    public void Typed_note_of_which_something_was_confirmed_is_said_once_at_its_check()
    {
        var report = Report(
            new NoteWritten(Written.Inspection, null, Words),
            new FindingsProposed(3, [Finding, Finding with { Cylinder = 4 }]),
            new ObservationMade(Written.Inspection, "cap-contacts", 3, "corroded", false, new(3, 0)),
            new ObservationMade(Written.Inspection, "plug-condition", 4, "wet", false, new(3, 1)));

        Assert.Equal("cap-contacts", Assert.Single(report.Notes).Check);
        Assert.Equal(Words, Assert.Single(report.Checks.Single(one => one.Check.Id == "cap-contacts").Said).Text);
        Assert.All(report.Checks.Where(one => one.Check.Id != "cap-contacts"), one => Assert.Empty(one.Said));
    }

    [Fact]
    public void Note_whose_record_was_withdrawn_or_came_after_closing_stands_by_itself()
    {
        EntryBody[] note = [new NoteWritten(Written.Inspection, null, Words), new FindingsProposed(3, [Finding])];
        var record = new ObservationMade(Written.Inspection, "cap-contacts", 3, "corroded", false, new(3, 0));

        Assert.Null(Assert.Single(Report([.. note, record, new EntryWithdrawn(5, "misread")]).Notes).Check);
        Assert.Null(Assert.Single(Report([.. note, new InspectionClosed(Written.Inspection), record]).Notes).Check);
    }

    [Fact]
    public void Note_that_is_left_out_stands_nowhere()
    {
        var report = Report(
            new NoteWritten(Written.Inspection, null, Words), new FindingsProposed(3, [Finding]),
            new ObservationMade(Written.Inspection, "cap-contacts", 3, "corroded", false, new(3, 0)), new ReportChoice(3, false));

        Assert.All(report.Checks, one => Assert.Empty(one.Said));
        Assert.Equal("1 note is left out of this report.", report.LeftOut);
    }

    [Fact]
    public void Spoken_command_is_no_note()
    {
        Assert.Empty(Notes(
            Spoken(3), new CommandHeard(3, SpokenCommand.NextCheck, null)));
    }

    [Fact]
    public void What_is_left_out_is_counted_and_never_told()
    {
        var report = Report(
            new NoteWritten(Written.Inspection, null, "Look for a longer lead"),
            new NoteWritten(Written.Inspection, null, "Ring Ms Rowntree"),
            new PhotoKept(Written.Inspection, new(new string('b', 64), 9, "image/jpeg"), 10, 10, null, null),
            new ReportChoice(3, false),
            new ReportChoice(4, false),
            new ReportChoice(5, false));

        Assert.Equal("2 notes and 1 photo are left out of this report.", report.LeftOut);
        Assert.All(report.Notes, note => Assert.True(note.IsLeftOut));
    }

    [Fact]
    public void Note_taken_in_again_is_not_left_out()
    {
        var report = Report(
            new NoteWritten(Written.Inspection, null, "Look for a longer lead"), new ReportChoice(3, false), new ReportChoice(3, true));

        Assert.Null(report.LeftOut);
        Assert.False(Assert.Single(report.Notes).IsLeftOut);
    }

    [Fact]
    public void Photo_that_is_left_out_does_not_stand_at_its_check()
    {
        var photo = new PhotoKept(Written.Inspection, new(new string('b', 64), 9, "image/jpeg"), 10, 10, "spark", 1);

        Assert.Single(Spark(Report(photo)).Photos);
        Assert.Empty(Spark(Report(photo, new ReportChoice(3, false))).Photos);
    }

    private static ReportCheck Spark(ReportView report) => report.Checks.Single(one => one.Check.Id == "spark");

    private static IEnumerable<string> Notes(IEnumerable<EntryBody> entries, params EntryBody[] further) =>
        Report([.. entries, .. further]).Notes.Select(note => note.Text);

    private static ReportView Report(params EntryBody[] entries) =>
        ReportBuilder.Build(Written.Scene(entries), WorkshopState.Empty, []);

    private static IEnumerable<EntryBody> Spoken(long sequence, params ProposedFinding[] findings) =>
    [
        new RecordingKept(Written.Inspection, new MediaFile(new string('a', 64), 32044, "audio/wav"), 1, null),
        new TranscriptMade(sequence, Words, [], true, "", ""),
        new FindingsProposed(sequence, findings),
    ];
}
