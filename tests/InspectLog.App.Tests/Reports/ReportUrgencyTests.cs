using InspectLog.App.Reports;
using InspectLog.App.Tests.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Reports;

/// <summary>How soon things are to be seen to: by a person, else by the sheet, else by what is with them.</summary>
public sealed class ReportUrgencyTests
{
    private const string Cap = "cap-contacts";

    [Theory]
    [InlineData("burnt", null, Urgency.Now)]
    [InlineData("burnt", Urgency.Now, Urgency.Now)]
    [InlineData("burnt", Urgency.Soon, Urgency.Soon)]
    [InlineData("burnt", Urgency.Later, Urgency.Later)]
    [InlineData("worn", null, Urgency.Soon)]
    [InlineData("worn", Urgency.Now, Urgency.Soon)]
    [InlineData("worn", Urgency.Soon, Urgency.Later)]
    [InlineData("worn", Urgency.Later, Urgency.Later)]
    public void Sheet_says_how_soon_what_fails_is_seen_to_and_what_needs_a_look_is_a_step_less_urgent(string condition, Urgency? ofSheet, Urgency expected)
    {
        var scene = Written.Scene(Written.Seen(Cap, condition, 2));
        var sheet = scene.Sheet with { Checks = [.. scene.Sheet.Checks.Select(check => check.Id == Cap ? check with { Urgency = ofSheet } : check)] };

        var line = Assert.Single(Report(scene with { Sheet = sheet }).Attention, line => line.Text.Contains("tower 2", StringComparison.Ordinal));

        Assert.Equal((expected, null), (line.Urgency, line.UrgencyBy));
    }

    [Fact]
    public void Last_word_of_a_person_stands_before_the_sheet_and_is_told_with_the_name()
    {
        var report = Report(Written.Scene(
            Written.Seen(Cap, "burnt", 2), new UrgencyJudged(Written.Inspection, Cap, "soon"), new UrgencyJudged(Written.Inspection, Cap, "later")));

        var line = Assert.Single(report.Attention, line => line.Word == "Failed");
        Assert.Equal(Urgency.Later, line.Urgency);
        Assert.NotNull(line.UrgencyBy);
    }

    [Fact]
    public void Word_said_after_closing_holds_and_one_of_another_inspection_does_not()
    {
        var report = Report(Written.Scene(
            Written.Seen(Cap, "burnt", 2), new InspectionClosed(Written.Inspection), new UrgencyJudged(Written.Inspection, Cap, "soon"), new UrgencyJudged(900, Cap, "later")));

        Assert.Equal(Urgency.Soon, Assert.Single(report.Attention, line => line.Word == "Failed").Urgency);
    }

    [Fact]
    public void Something_left_disconnected_is_urgent_now_and_what_is_only_missing_can_wait()
    {
        var report = Report(Written.Scene(
            new LooseEndOpened(Written.Inspection, "Coil lead off", "Put it back", null, null, null), Written.Seen(Cap, "clean", 1)));

        Assert.Equal(Urgency.Now, Assert.Single(report.Attention, line => line.Word == "Still undone").Urgency);
        Assert.Equal(Urgency.Later, Assert.Single(report.Attention, line => line.Word == "Not finished").Urgency);
    }

    [Theory]
    [InlineData("Now", null)]
    [InlineData("", null)]
    [InlineData("now", Urgency.Now)]
    [InlineData("soon", Urgency.Soon)]
    [InlineData("later", Urgency.Later)]
    public void Words_are_these_three(string word, Urgency? expected)
    {
        Assert.Equal(expected, ReportUrgency.Parse(word));
        Assert.True(expected is null || ReportUrgency.WordOf(expected.Value) == word);
    }

    private static ReportView Report(BenchScene scene) => ReportBuilder.Build(scene, WorkshopState.Empty, []);
}
