using InspectLog.App.Reports;
using InspectLog.App.Tests.Bench;
using InspectLog.Checks;
using InspectLog.Doubts;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Reports;

/// <summary>The report tells it straight: what is bad, missing or not settled comes first, wherever it stands.</summary>
public sealed class ReportAttentionTests
{
    private const string Cap = "cap-contacts";
    private const string Coil = "coil-secondary-resistance";

    private static readonly MediaFile Recording = new(new string('a', 64), 32044, "audio/wav");

    [Fact]
    public void Check_with_a_place_missing_does_not_stand_under_passed()
    {
        var report = Report([.. Clean(1, 2, 4, 5, 6)]);

        Assert.Equal(ReportSectionKind.NotFinished, Of(report, Cap).Section);
        Assert.Contains(new("Not finished", default, "Cap contacts, tower 3: nothing is recorded", Cap), report.Attention);
        Assert.StartsWith("0 of 15 checks are in order, 1 is not finished", report.Summary[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Check_with_all_places_good_passes()
    {
        var report = Report([.. Clean(1, 2, 3, 4, 5, 6)]);

        Assert.Equal(ReportSectionKind.Passed, Of(report, Cap).Section);
        Assert.StartsWith("1 of 15 checks is in order", report.Summary[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Same_thing_said_again_and_not_confirmed_is_one_line_with_its_number()
    {
        var report = Report([.. Heard(3, Corroded(3)), .. Heard(6, Corroded(3)), .. Heard(9, Corroded(3))]);

        Assert.EndsWith(" (3 times)", Assert.Single(report.Attention, line => line.Word == "Heard but not confirmed").Text, StringComparison.Ordinal);
        Assert.Equal(3, Of(report, Cap).Unconfirmed);
    }

    [Theory]
    [InlineData(9400, ReportSectionKind.Passed)]
    [InlineData(9300, ReportSectionKind.NotFinished)]
    public void Value_said_of_a_reading_that_is_recorded_already_keeps_no_check_open(double said, ReportSectionKind section)
    {
        var report = Report([Written.Reading(Coil, 9400), .. Heard(4, Corroded(3) with { Kind = "reading", Check = Coil, Cylinder = null, Value = said, Condition = null })]);

        Assert.Equal(section, Of(report, Coil).Section);
    }

    [Fact]
    public void Check_with_a_finding_that_is_not_confirmed_does_not_stand_under_passed_and_the_finding_is_named()
    {
        var report = Report([.. Clean(1, 2, 3, 4, 5, 6), .. Heard(9, Corroded(3))]);

        Assert.Equal(ReportSectionKind.NotFinished, Of(report, Cap).Section);
        var told = Assert.Single(report.Attention, line => line.Word == "Heard but not confirmed");
        Assert.Equal("Cap contacts, tower 3: corroded, said as “Tower 3 of the cap is corroded”", told.Text);
        Assert.Contains("1 finding is not confirmed", report.Summary[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Doubt_of_an_unconfirmed_finding_is_told_with_it()
    {
        var report = Report([.. Heard(3, Corroded(3) with { Doubts = [new Hedged()] })]);

        Assert.Contains("said with a doubt", Assert.Single(report.Attention, line => line.Word == "Heard but not confirmed").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Unconfirmed_finding_of_a_note_that_is_left_out_is_told_without_its_words()
    {
        var report = Report([.. Heard(3, Corroded(3)), new ReportChoice(3, false)]);

        var told = Assert.Single(report.Attention, line => line.Word == "Heard but not confirmed");
        Assert.DoesNotContain("orroded", told.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_place_of_a_check_that_was_left_out_comes_first()
    {
        var report = Report(
        [
            Written.Reading(Coil, 9400),
            Written.Seen(Cap, "burnt", 2),
            new CheckLeftOut(Written.Inspection, Cap, "The cap was sent away"),
            new InspectionClosed(Written.Inspection),
        ]);

        Assert.Equal(ReportSectionKind.Failed, Of(report, Cap).Section);
        Assert.Equal(
            new AttentionLine("Failed", Inspecting.Standing.PlaceOutcome.Bad, "Cap contacts, tower 2: burnt; the check was left out: The cap was sent away", Cap) { Urgency = Urgency.Now },
            report.Attention[0]);
        Assert.StartsWith("1 check failed", report.Summary[1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_bad_at_one_place_stands_before_left_out_wherever_checks_are_counted_or_listed()
    {
        var scene = Written.Scene(
            Written.Seen(Cap, "burnt", 2),
            new CheckLeftOut(Written.Inspection, Cap, "No time today"),
            new CheckLeftOut(Written.Inspection, Coil, "No time today"));

        Assert.StartsWith("1 failed, 1 left out", Tally.Of(scene), StringComparison.Ordinal);
        var progress = Inspecting.Standing.Standings.Of(scene.Inspection, scene.Sheet, scene.Sheet.Find(Cap)!);
        Assert.Equal(("burnt, rest left out", "bad"), (progress.Word, InspectLog.App.Ui.Outcomes.Shape(progress)));
    }

    [Fact]
    public void Loose_ends_stand_in_the_summary_and_are_named_with_their_reasons()
    {
        var report = Report(
        [
            new LooseEndOpened(Written.Inspection, "Air filter off", "Put it back", null, null, null),
            new LooseEndOpened(Written.Inspection, "Lamp hung up", "Take it down", null, null, null),
            new LooseEndWaived(4, "Used tomorrow"),
        ]);

        Assert.Equal(
            [("Still undone", "Air filter off"), ("Left as it is", "Lamp hung up: Used tomorrow")],
            report.Attention.Select(line => (line.Word, line.Text)));
        Assert.Equal("1 loose end is still open; 1 loose end was left as it is.", report.Summary[1]);
    }

    [Fact]
    public void Open_inspection_says_what_is_missing_and_a_closed_one_does_not()
    {
        EntryBody[] entries = [.. Clean(1, 2, 4, 5, 6), new LooseEndOpened(Written.Inspection, "Air filter off", "Put it back", null, null, null)];

        var missing = Report(entries).StillMissing;
        Assert.Equal("cap contacts, tower 3", missing[0]);
        Assert.Equal("1 loose end", missing[^1]);
        Assert.Empty(Report([.. entries, new InspectionClosed(Written.Inspection)]).StillMissing);
    }

    [Fact]
    public void Voice_note_that_was_not_read_is_told()
    {
        var report = Report([new RecordingKept(Written.Inspection, Recording, 1, null)]);

        Assert.Equal(("Not read", "1 voice note, kept as a recording"), (report.Attention[0].Word, report.Attention[0].Text));
        Assert.DoesNotContain("Nothing failed", report.Summary[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Conditional_reading_is_named_with_its_value_and_a_failed_one_before_it()
    {
        var report = Report([Written.Reading(Coil, 8010), Written.Seen(Cap, "burnt", 2)]);

        Assert.Equal(["Failed", "Too close to the limit to be sure"], report.Attention.Take(2).Select(line => line.Word));
        Assert.StartsWith("Coil secondary: 8.01", report.Attention[1].Text, StringComparison.Ordinal);
        Assert.Equal(3, report.Summary.Count);
    }

    [Fact]
    public void Conditional_reading_and_what_needs_a_look_are_never_called_doubt()
    {
        var report = Report([Written.Reading(Coil, 8010), Written.Seen("plug-condition", "worn", 2)]);

        Assert.Equal(["Too close to the limit to be sure", "Needs a look"], report.Attention.Take(2).Select(line => line.Word));
        Assert.StartsWith("1 check is too close to a limit to be sure; 1 check needs a look", report.Summary[1], StringComparison.Ordinal);
        Assert.Equal(ReportSectionKind.Conditional, Of(report, Coil).Section);
        Assert.Equal(ReportSectionKind.NeedsLook, Of(report, "plug-condition").Section);
        var tally = Tally.Of(Written.Scene(Written.Reading(Coil, 8010), Written.Seen(Cap, "burnt", 2)));
        Assert.StartsWith("1 conditional, 1 failed", tally, StringComparison.Ordinal);
        string[] all = [.. report.Attention.Select(line => line.Word), .. report.Summary, tally];
        Assert.DoesNotContain(all, text => text.Contains("doubt", StringComparison.OrdinalIgnoreCase));
    }

    private static ReportView Report(EntryBody[] entries) =>
        ReportBuilder.Build(Written.Scene(entries), WorkshopState.Empty, []);

    private static ReportCheck Of(ReportView report, string check) => report.Checks.Single(one => one.Check.Id == check);

    private static IEnumerable<EntryBody> Clean(params int[] towers) => towers.Select(tower => Written.Seen(Cap, "clean", tower));

    private static IEnumerable<EntryBody> Heard(long sequence, ProposedFinding finding) =>
    [
        new RecordingKept(Written.Inspection, Recording, 1, null),
        new TranscriptMade(sequence, finding.Words, [], true, "", ""),
        new FindingsProposed(sequence, [finding]),
    ];

    private static ProposedFinding Corroded(int tower) => new(
        "observation", Cap, tower, null, null, null, "corroded", false, null, $"Tower {tower} of the cap is corroded", 0, 31, []);
}
