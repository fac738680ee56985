using InspectLog.App.Tests.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Words;

/// <summary>How long loose ends were open, and what is said of it.</summary>
public sealed class EndTimesTests
{
    private const long End = 3;

    private static readonly DateTimeOffset Start = new(2026, 3, 4, 9, 0, 0, TimeSpan.FromHours(1));

    private static readonly CheckSheet Sheet = BuiltInSheets.All[0];

    private static readonly LooseEndOpened IgnitionOn = new(
        Written.Inspection, "Ignition switched on", "Switch the ignition off", "spark", null, "ignition-on");

    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(83.9, "1:23")]
    [InlineData(120, "2:00")]
    [InlineData(3599, "59:59")]
    [InlineData(3723, "1:02:03")]
    [InlineData(180_000, "50:00:00")]
    public void Clock_shows_minutes_and_seconds_and_hours_where_there_are_any(double seconds, string shows) =>
        Assert.Equal(shows, EndTimes.Clock(TimeSpan.FromSeconds(seconds)));

    [Theory]
    [InlineData(0, "0 s")]
    [InlineData(45, "45 s")]
    [InlineData(120, "2 min")]
    [InlineData(90, "1 min 30 s")]
    [InlineData(4800, "1 h 20 min")]
    [InlineData(36_000, "10 h")]
    [InlineData(93_665, "26 h 1 min")]
    public void Duration_names_what_is_not_zero(double seconds, string says) =>
        Assert.Equal(says, EndTimes.Duration(TimeSpan.FromSeconds(seconds)).Replace('\u00a0', ' '));

    [Theory]
    [InlineData(240, "Ignition switched on for 4 min; the sheet allows 2 min")]
    [InlineData(121, "Ignition switched on for 2 min 1 s; the sheet allows 2 min")]
    [InlineData(120, null)]
    [InlineData(10, null)]
    public void What_was_open_for_longer_than_the_sheet_allows_is_told(int seconds, string? says)
    {
        Assert.Equal(says is null ? [] : [says], TooLong(Inspection(IgnitionOn, seconds, new LooseEndTied(End))));
        Assert.Equal(says is null ? [] : [says], TooLong(Inspection(IgnitionOn, seconds, new LooseEndWaived(End, "The engine runs"))));
    }

    [Fact]
    public void What_has_no_limit_is_never_too_long()
    {
        var cap = new LooseEndOpened(Written.Inspection, "Distributor cap off", "Seat it", "cap-contacts", null, "distributor-cap");

        Assert.Empty(TooLong(Inspection(cap, 86_400, new LooseEndTied(End))));
        Assert.Empty(TooLong(Inspection(IgnitionOn with { Disturbance = null }, 86_400, new LooseEndTied(End))));
    }

    [Fact]
    public void What_is_open_still_is_told_with_since_when_and_the_limit()
    {
        var inspection = Inspection(IgnitionOn, 600, new NoteWritten(Written.Inspection, null, "Lamp found"));

        Assert.Empty(TooLong(inspection));
        Assert.Equal("since 09:00, and the sheet allows 2 min", EndTimes.StillOpen(inspection.LooseEnds[0], Sheet)!.Replace('\u00a0', ' '));
    }

    [Fact]
    public void End_is_over_its_time_from_the_second_of_its_limit_and_a_clock_set_back_makes_it_no_shorter_than_nothing()
    {
        var timed = Assert.Single(TimedEnd.Among(Inspection(IgnitionOn, 600, new NoteWritten(Written.Inspection, null, "Lamp found")).LooseEnds, Sheet));

        Assert.Equal(120, timed.LimitSeconds);
        Assert.False(timed.IsOver(Start.AddSeconds(119.9)));
        Assert.True(timed.IsOver(Start.AddSeconds(120)));
        Assert.Equal(TimeSpan.FromSeconds(83), timed.OpenFor(Start.AddSeconds(83.9)));
        Assert.Equal(TimeSpan.Zero, timed.OpenFor(Start.AddHours(-1)));
    }

    [Fact]
    public void Sheet_from_before_limits_of_time_limits_nothing()
    {
        var old = BuiltInSheets.FindExact("dd1c69d376bbdd2ee2362038c7c4f20b445df490d1747eb255ee6ae7c1cd94e4")!;

        Assert.Empty(TimedEnd.Among(Inspection(IgnitionOn, 600, new LooseEndTied(End)).LooseEnds, old));
    }

    private static IEnumerable<string> TooLong(InspectionState inspection) =>
        EndTimes.TooLong(inspection, Sheet).Select(text => text.Replace('\u00a0', ' '));

    /// <summary>An inspection in which something was left as it is, and something else followed so many seconds later.</summary>
    private static InspectionState Inspection(LooseEndOpened opened, int seconds, EntryBody then)
    {
        (double After, EntryBody Body)[] entries =
            [(-60, new VehicleAdded("Marigold", "1974 saloon", null)), (-30, Written.Started()), (0, opened), (seconds, then)];
        var vehicle = entries.Select((one, at) => Written.Entry(at + 1, Start.AddSeconds(one.After), one.Body) with { Offset = Start.Offset })
            .Aggregate(VehicleState.Before("marigold"), (state, entry) => state.Apply(entry));
        return BenchScene.Of(vehicle, SheetLibrary.BuiltIn, Written.Inspection)!.Inspection;
    }
}
