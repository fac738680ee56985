using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using static InspectLog.App.Tests.Bench.InDepth;

namespace InspectLog.App.Tests.Bench;

/// <summary>Readings that are decided with those of another check.</summary>
public partial class ComparingTests
{
    // 11.6 V lies well within 11.5 to 13.5 V, and 1.2 V are lost from the battery all the same.
    [Fact]
    public void Supply_within_its_span_fails_when_the_battery_shows_what_is_lost()
    {
        var alone = Scene().Record(Volts(Supply, 11.6));
        var together = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6));

        Assert.NotEqual(Decision.Fail, alone.Last(Supply).Body.Conformity!.Decision);
        var lost = together.Last(Supply).Body;
        Assert.Equal(Decision.Fail, lost.Conformity!.Decision);
        Assert.Equal(1.2, lost.Conformity.Value, 12);
        Assert.Equal((null, 0.5), (lost.Limits!.Lower, lost.Limits.Upper));
        Assert.Equal((ComparisonForm.Difference, Battery, together.Last(Battery).Sequence, true),
            (lost.With!.Form, lost.With.Check, lost.With.Record, lost.With.SameInstrument));
    }

    [Fact]
    public void Supply_below_its_span_passes_when_the_battery_is_low_too()
    {
        var supply = Scene().Record(Volts(Battery, 11.6)).Record(Volts(Supply, 11.4)).Last(Supply).Body;

        Assert.Equal(Decision.Pass, supply.Conformity!.Decision);
    }

    // The share of the difference, and two counts and half a step of each reading: as in the tests of the figure itself.
    [Fact]
    public void One_meter_for_both_leaves_a_fifth_of_the_uncertainty_of_two()
    {
        double U(Instrument? forBattery, Instrument? forSupply) => Scene()
            .Record(Volts(Battery, 12.8, forBattery)).Record(Volts(Supply, 11.6, forSupply)).Last(Supply).Body.Conformity!.StandardUncertainty;

        var one = U(Meter, Meter);
        var two = U(Meter, OtherMeter);

        Assert.Equal(Math.Sqrt(((9.6 * 9.6) + (2 * 400) + (2 * 25)) / 3) / 1000, one, 9);
        Assert.Equal(Math.Sqrt(((122.4 * 122.4) + (112.8 * 112.8) + (2 * 25)) / 3) / 1000, two, 9);
        Assert.Equal(two, U(Meter, Meter with { Id = "third" }), 12);
    }

    [Fact]
    public void Meter_that_is_only_assumed_is_not_taken_for_one_and_the_same()
    {
        var assumed = InstrumentChoice.Assumed.First(one => one.Kind == QuantityKind.Voltage);

        var supply = Scene().Record(Volts(Battery, 12.8, assumed)).Record(Volts(Supply, 11.6, assumed)).Last(Supply).Body;

        Assert.False(supply.With!.SameInstrument);
    }

    [Fact]
    public void Without_the_battery_the_span_decides_and_says_what_is_missing()
    {
        var supply = Scene().Record(Volts(Supply, 11.6)).Last(Supply).Body;

        Assert.Null(supply.With);
        Assert.Equal((11.5, 13.5), (supply.Limits!.Lower, supply.Limits.Upper));
        Assert.StartsWith("Decided by itself while battery voltage is not read.", supply.Limits.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_of_the_vehicles_own_decide_the_reading_itself()
    {
        var scene = Scene(new LimitsSet(Supply, 11, 12, "Manual, page 3") { Sheet = Sheet.Id }).Record(Volts(Battery, 12.8));
        var given = ReadingRecords.Decide(
            Written.Inspection, DecisionRule.NonBinary, new(scene.Sheet.Find(Supply)!, null, [11.6], null, "11.6", Meter, []));

        var supply = scene.Record(given).Last(Supply).Body;

        Assert.Null(supply.With);
        Assert.Equal("Manual, page 3", supply.Limits!.Source);
    }

    // 10 kΩ per foot allow 15.7 kΩ over 480 mm, where a lead of any length may have 22.
    [Fact]
    public void Lead_is_decided_by_its_length_where_that_is_known()
    {
        var scene = Scene().Record(Ohm(19_000, 2)).Record(Ohm(19_000, 3)).Record(Millimetres(480, 3));

        Assert.Equal(Decision.Pass, scene.Last(Lead, 2).Body.Conformity!.Decision);
        Assert.StartsWith("Decided by itself while lead length is not read.", scene.Last(Lead, 2).Body.Limits!.Source, StringComparison.Ordinal);
        var byLength = scene.Last(Lead, 3).Body;
        Assert.Equal(Decision.Fail, byLength.Conformity!.Decision);
        Assert.Equal(19_000.0 / 480, byLength.Conformity.Value, 9);
        Assert.Contains("service manual of 2004", byLength.Limits!.Source, StringComparison.Ordinal);
        Assert.Contains(byLength.Conformity.Contributions, one => one.Name.EndsWith("of the other reading", StringComparison.Ordinal));
    }

    [Fact]
    public void Long_lead_that_one_limit_for_all_would_fail_passes_by_its_length()
    {
        var scene = Scene().Record(Millimetres(900, 1)).Record(Ohm(25_000, 1));

        Assert.Equal(Decision.Pass, scene.Last(Lead, 1).Body.Conformity!.Decision);
    }

    [Fact]
    public void Length_of_nought_decides_nothing()
    {
        var scene = Scene().Record(Millimetres(0, 1)).Record(Ohm(19_000, 1));

        Assert.Null(scene.Last(Lead, 1).Body.With);
    }

    [Fact]
    public void What_is_recorded_is_enough_to_make_the_decision_again()
    {
        var supply = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 12.34)).Last(Supply).Body;

        var figure = Compared.Of(supply.With!.Form, supply.Reading, supply.With.Reading, supply.With.SameInstrument);
        var again = ConformityRule.Decide(
            figure, Limits.Of(supply.Limits!.Lower, supply.Limits.Upper), DecisionRule.Find(supply.Limits.Rule)!);

        Assert.Equal(
            (again.Value, again.StandardUncertainty, again.ProbabilityOfConformity, again.Decision),
            (supply.Conformity!.Value, supply.Conformity.StandardUncertainty, supply.Conformity.ProbabilityOfConformity, supply.Conformity.Decision));
    }

    [Fact]
    public void Sheet_without_comparisons_leaves_entries_as_they_are()
    {
        EntryBody[] bodies = [Written.Reading("supply-voltage", 11.6)];

        Assert.Same(bodies, Comparing.Settled(Written.Scene(), bodies));
    }
}
