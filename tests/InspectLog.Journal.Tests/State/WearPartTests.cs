using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using static InspectLog.Journal.Tests.Support.Written;

namespace InspectLog.Journal.Tests.State;

/// <summary>Parts that wear, as the entries of a vehicle have them.</summary>
public sealed class WearPartTests
{
    [Fact]
    public void Wear_parts_are_fitted_anew_and_retired()
    {
        var state = After(
            new VehicleAdded("Teasel", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartAdded("Rotor", new(null, 30000, "km"), new(new(2024, 5, 1), null, null)),
            new WearPartFitted(2, new(new(2026, 5, 1), 95000, "km")),
            new WearPartFitted(99, new(new(2026, 5, 1), 95000, "km")),
            new WearPartRetired(3));

        var plugs = Assert.Single(state.WearParts);
        Assert.Equal((2, "Spark plugs", 2), (plugs.Number, plugs.Name, plugs.Fittings.Count));
        Assert.Equal(95000, plugs.Fitted.Odometer);
    }

    [Fact]
    public void Interval_set_anew_stands_and_the_fittings_stay()
    {
        var state = After(
            new VehicleAdded("Teasel", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartIntervalSet(2, new(null, 30000, "km")),
            new WearPartIntervalSet(99, new(1, null, null)));

        var plugs = Assert.Single(state.WearParts);
        Assert.Equal(new WearInterval(null, 30000, "km"), plugs.Interval);
        Assert.Equal(new DateOnly(2024, 5, 1), plugs.Fitted.On);
    }

    [Fact]
    public void What_was_no_new_one_is_known_of_its_part_until_it_is_said_anew()
    {
        var state = After(
            new VehicleAdded("Teasel", "", null),
            new WearPartAdded("Spark plugs", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartAdded("Rotor", new(24, null, null), new(new(2024, 5, 1), 80000, "km")),
            new WearPartNotRenewed(3, 20, "A used one was put in."),
            new WearPartNotRenewed(3, 30, "Said of another car."),
            new WearPartNotRenewed(99, 40, "Nothing."));

        Assert.Null(state.WearParts[0].NotRenewed);
        Assert.Equal((5, 30, "Said of another car."), (state.WearParts[1].NotRenewed!.Sequence, state.WearParts[1].NotRenewed!.Body.UpTo, state.WearParts[1].NotRenewed!.Body.Reason));
    }

    [Fact]
    public void A_fitting_recorded_late_does_not_stand_in_for_a_newer_one()
    {
        var part = new WearPart(2, "Rotor", new(24, null, null), [new(new(2026, 5, 1), null, null), new(new(2023, 5, 1), null, null)]);

        Assert.Equal(new DateOnly(2026, 5, 1), part.Fitted.On);
    }
}
