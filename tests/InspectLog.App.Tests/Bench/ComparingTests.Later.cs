using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using static InspectLog.App.Tests.Bench.InDepth;

namespace InspectLog.App.Tests.Bench;

/// <content>What is read, put right or withdrawn later.</content>
public partial class ComparingTests
{
    [Fact]
    public void Battery_read_after_the_supply_decides_it_anew_as_an_amendment()
    {
        var before = Scene().Record(Volts(Supply, 11.6));

        var after = before.Record(Volts(Battery, 12.8));

        var supply = after.Last(Supply);
        Assert.Equal(Decision.Fail, supply.Body.Conformity!.Decision);
        Assert.Equal(before.Last(Supply).Sequence, supply.Sequence);
        var was = Assert.IsType<ReadingDecided>(Assert.Single(supply.History.Past).Says);
        Assert.Null(was.With);
        Assert.Equal(
            $"11.60\u00a0V, decided by itself: {was.Conformity!.Decision.Words()}", KeptWords.Was(after.Sheet, was, supply.Body));
    }

    [Fact]
    public void Both_in_one_write_are_decided_together_in_either_order()
    {
        var supplyFirst = Scene().Record(Volts(Supply, 11.6), Volts(Battery, 12.8));
        var batteryFirst = Scene().Record(Volts(Battery, 12.8), Volts(Supply, 11.6));

        Assert.Equal(Decision.Fail, supplyFirst.Last(Supply).Body.Conformity!.Decision);
        Assert.Equal(supplyFirst.Last(Battery).Sequence, supplyFirst.Last(Supply).Body.With!.Record);
        Assert.Equal(batteryFirst.Last(Battery).Sequence, batteryFirst.Last(Supply).Body.With!.Record);
        Assert.Empty(batteryFirst.Last(Supply).History.Past);
    }

    [Fact]
    public void Battery_put_right_decides_the_supply_anew()
    {
        var scene = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6));

        var after = scene.Record([.. Amending.Bodies(scene, scene.Last(Battery).Sequence, Volts(Battery, 11.8))]);

        Assert.Equal(Decision.Pass, after.Last(Supply).Body.Conformity!.Decision);
        Assert.Equal(0.2, after.Last(Supply).Body.Conformity!.Value, 9);
    }

    [Fact]
    public void Battery_withdrawn_leaves_the_supply_to_its_span_and_restored_decides_it_again()
    {
        var scene = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6));
        var battery = scene.Last(Battery).Sequence;

        var without = scene.Record([.. Withdrawing.Withdraw(scene, battery, "misread")]);
        var again = without.Record([.. Withdrawing.Restore(without, battery)]);

        Assert.Null(without.Last(Supply).Body.With);
        Assert.Equal(Decision.Fail, again.Last(Supply).Body.Conformity!.Decision);
    }

    // A battery read an hour later says nothing of what was lost before.
    [Fact]
    public void Later_battery_leaves_the_supply_with_the_one_it_was_read_with()
    {
        var scene = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 12.5));

        var after = scene.Record(Volts(Battery, 13.2));

        Assert.Equal(0.3, after.Last(Supply).Body.Conformity!.Value, 9);
        Assert.Empty(after.Last(Supply).History.Past);
    }

    [Fact]
    public void Supply_put_right_stays_with_the_battery_it_was_read_with()
    {
        var scene = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6)).Record(Volts(Battery, 13.2));

        var after = scene.Record([.. Amending.Bodies(scene, scene.Last(Supply).Sequence, Volts(Supply, 12.6))]);

        Assert.Equal(0.2, after.Last(Supply).Body.Conformity!.Value, 9);
    }

    [Fact]
    public void Earlier_supply_is_left_as_it_was_when_the_battery_comes_after_two()
    {
        var scene = Scene().Record(Volts(Supply, 10.9)).Record(Volts(Supply, 12.5)).Record(Volts(Battery, 12.8));

        var readings = scene.Inspection.Readings.FindAll(one => one.Body.Check == Supply);

        Assert.Null(readings[0].Body.With);
        Assert.NotNull(readings[1].Body.With);
    }

    [Fact]
    public void After_closing_the_battery_put_right_decides_the_supply_under_the_limits_it_had()
    {
        var open = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6));
        var scene = Written.After(open, new InspectionClosed(Written.Inspection));

        var after = scene.Record([.. Amending.Bodies(scene, scene.Last(Battery).Sequence, Volts(Battery, 11.9))]);

        Assert.Equal(Decision.Pass, after.Last(Supply).Body.Conformity!.Decision);
        Assert.Equal(open.Last(Supply).Body.Limits, after.Last(Supply).Body.Limits);
        Assert.True(after.Last(Supply).History.LastChange!.IsLater);
    }

    [Fact]
    public void Battery_added_after_closing_changes_no_decision()
    {
        var scene = Written.After(Scene().Record(Volts(Supply, 11.6)), new InspectionClosed(Written.Inspection));

        var after = scene.Record(Volts(Battery, 12.8));

        Assert.Null(after.Last(Supply).Body.With);
        Assert.Empty(after.Last(Supply).History.Past);
    }
}
