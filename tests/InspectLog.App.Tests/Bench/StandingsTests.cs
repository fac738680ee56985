using InspectLog.App.Bench;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using static InspectLog.App.Tests.Bench.Written;

namespace InspectLog.App.Tests.Bench;

/// <summary>Where checks stand, in the words the pages show.</summary>
public sealed class StandingsTests
{
    [Fact]
    public void Check_without_a_record_is_not_done()
    {
        var progress = Of(Scene(), "spark");

        Assert.Equal((CheckStanding.NotDone, "not done"), (progress.Standing, progress.Word));
        Assert.Equal(6, progress.Places.Count);
    }

    [Theory]
    [InlineData(1.2, PlaceOutcome.Good, "pass")]
    [InlineData(1.99, PlaceOutcome.Doubtful, "conditional pass")]
    [InlineData(2.01, PlaceOutcome.Doubtful, "conditional fail")]
    [InlineData(2.5, PlaceOutcome.Bad, "fail")]
    public void Reading_of_a_check_done_once_decides_it(double ohms, PlaceOutcome outcome, string word)
    {
        var progress = Of(Scene(Reading("coil-circuit-resistance", ohms)), "coil-circuit-resistance");

        Assert.Equal((CheckStanding.Decided, outcome, word), (progress.Standing, progress.Outcome, progress.Word));
    }

    [Fact]
    public void Last_reading_of_a_place_counts()
    {
        var progress = Of(
            Scene(Reading("coil-circuit-resistance", 2.5), Reading("coil-circuit-resistance", 1.2)),
            "coil-circuit-resistance");

        Assert.Equal("pass", progress.Word);
    }

    [Fact]
    public void Reading_without_limits_is_recorded_and_not_judged()
    {
        var progress = Of(Scene(Reading("ignition-timing", 8)), "ignition-timing");

        Assert.Equal((PlaceOutcome.Recorded, "recorded"), (progress.Outcome, progress.Word));
    }

    [Fact]
    public void Check_done_at_some_places_says_how_many()
    {
        var progress = Of(Scene(Seen("spark", "present", 1), Seen("spark", "present", 4)), "spark");

        Assert.Equal((CheckStanding.Captured, "2 of 6"), (progress.Standing, progress.Word));
    }

    [Fact]
    public void Worst_place_speaks_for_the_check()
    {
        var scene = Scene(
            [.. Enumerable.Range(1, 5).Select(cylinder => Seen("spark", "present", cylinder)), Seen("spark", "present", 6, absent: true)]);

        var progress = Of(scene, "spark");

        Assert.Equal((CheckStanding.Decided, PlaceOutcome.Bad, "not present"), (progress.Standing, progress.Outcome, progress.Word));
    }

    [Fact]
    public void Fault_that_was_put_right_and_seen_again_no_longer_counts()
    {
        var scene = Scene(
            Seen("rotor-top", "corroded"), Done("rotor-top", "cleaned"), Seen("rotor-top", "clean"));

        Assert.Equal(PlaceOutcome.Good, Of(scene, "rotor-top").Outcome);
    }

    [Fact]
    public void Record_about_the_whole_counts_for_each_place()
    {
        var progress = Of(Scene(Seen("cap-contacts", "clean")), "cap-contacts");

        Assert.All(progress.Places, place => Assert.Equal(PlaceOutcome.Good, place.Outcome));
    }

    [Fact]
    public void Check_left_out_says_so_until_it_is_done_after_all()
    {
        Assert.Equal(
            CheckStanding.LeftOut,
            Of(Scene(new CheckLeftOut(Inspection, "engine-restart", "No fuel")), "engine-restart").Standing);
        Assert.Equal(
            CheckStanding.Decided,
            Of(
                Scene(new CheckLeftOut(Inspection, "engine-restart", "No fuel"), Seen("engine-restart", "started")),
                "engine-restart").Standing);
    }

    [Fact]
    public void Observation_worse_than_the_reading_speaks_for_the_place()
    {
        var scene = Scene(Reading("lead-resistance", 9000, 3), Seen("lead-resistance", "open circuit", 3));

        Assert.Equal(PlaceOutcome.Bad, Of(scene, "lead-resistance").Places[2].Outcome);
    }

    private static CheckProgress Of(BenchScene scene, string check) =>
        Standings.Of(scene.Inspection, scene.Sheet, scene.Sheet.Find(check)!);
}
