using InspectLog.App.Bench;
using InspectLog.App.Tests.Bench;
using InspectLog.App.Wear;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using Microsoft.Extensions.Time.Testing;
using System.Globalization;

namespace InspectLog.App.Tests.Wear;

/// <summary>What was recorded as replaced is offered as the fitting of the part that is watched.</summary>
public sealed class ReplacementTests : IDisposable
{
    private const string Tess = "Tess Okafor";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");
    private readonly FakeTimeProvider _clock = new(new(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));
    private readonly Garage _garage;

    public ReplacementTests()
    {
        _garage = Garage.Open(_folder.FullName, _clock);
        _garage.AddVehicle(Tess, new VehicleAdded("Teasel", "", null));
    }

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("Distributor cap", "cap-contacts", null)]
    [InlineData("Rotor", "rotor-blade", null)]
    [InlineData("rotor arm", "rotor-blade", null)]
    [InlineData("Spark plugs", "plug-condition", "1 2 3 4 5 6")]
    [InlineData("Plug leads", "lead-condition", "6 5 4 3 2 1")]
    public void Whole_replacement_is_offered_with_the_odometer_of_its_inspection(string part, string check, string? cylinders)
    {
        var found = After(part, "2024-05-01", check, cylinders);

        Assert.Equal((new DateOnly(2026, 11, 25), 95000.0, "km"), (found!.On, found.Odometer, found.OdometerUnit));
    }

    [Theory]
    [InlineData("Spark plugs", "2024-05-01", "plug-condition", "3")]
    [InlineData("Spark plugs", "2024-05-01", "plug-condition", "1 2 3 4 5")]
    [InlineData("Spark plugs", "2024-05-01", "lead-condition", "1 2 3 4 5 6")]
    [InlineData("Rotor", "2026-11-25", "rotor-blade", null)]
    [InlineData("Alternator belt", "2024-05-01", "rotor-blade", null)]
    public void Nothing_is_offered_for_a_part_of_a_set_another_part_or_one_fitted_that_day(string part, string fitted, string check, string? cylinders) =>
        Assert.Null(After(part, fitted, check, cylinders));

    [Fact]
    public void Only_what_was_replaced_counts_and_nothing_that_was_withdrawn()
    {
        Watch("Rotor", "2024-05-01");
        var inspection = Start();
        var state = Append(new ActionDone(inspection, "rotor-blade", null, "cleaned", null));
        Assert.Null(Offered(state));

        state = Append(new ActionDone(inspection, "rotor-blade", null, "replaced", null));
        Assert.NotNull(Offered(state));

        Assert.Null(Offered(Append(new EntryWithdrawn(state.NextSequence - 1, "Said of another car."))));
    }

    [Fact]
    public void Offer_goes_once_the_fitting_is_recorded()
    {
        Watch("Rotor", "2024-05-01");
        var state = Append(new ActionDone(Start(), "rotor-blade", null, "replaced", null));
        var part = state.WearParts[0].Number;

        Assert.Null(Offered(Append(new WearPartFitted(part, new(Offered(state)!.On, 95000, "km")))));
    }

    [Fact]
    public void Offer_that_was_refused_stays_away_until_something_new_is_recorded()
    {
        Watch("Rotor", "2024-05-01");
        var inspection = Start();
        var state = Append(new ActionDone(inspection, "rotor-blade", null, "replaced", null));
        var part = state.WearParts[0].Number;

        state = Append(new WearPartNotRenewed(part, Offered(state)!.Entry, "A used one was put in."));
        Assert.Null(Offered(state));

        state = Append(new ActionDone(inspection, "rotor-blade", null, "replaced", null));
        Assert.Equal(state.NextSequence - 1, Offered(state)!.Entry);
    }

    [Fact]
    public void Set_that_was_refused_is_offered_again_only_when_the_whole_of_it_is_replaced_anew()
    {
        Watch("Spark plugs", "2024-05-01");
        var inspection = Start();
        var state = Append([.. Enumerable.Range(1, 6).Select(plug => new ActionDone(inspection, "plug-condition", plug, "replaced", null))]);
        state = Append(new WearPartNotRenewed(state.WearParts[0].Number, Offered(state)!.Entry, "Cleaned, not new."));

        state = Append([.. Enumerable.Range(1, 5).Select(plug => new ActionDone(inspection, "plug-condition", plug, "replaced", null))]);
        Assert.Null(Offered(state));

        Assert.NotNull(Offered(Append(new ActionDone(inspection, "plug-condition", 6, "replaced", null))));
    }

    private Replacement? After(string part, string fitted, string check, string? cylinders)
    {
        Watch(part, fitted);
        var inspection = Start();
        var places = cylinders?.Split(' ').Select(cylinder => (int?)int.Parse(cylinder, CultureInfo.InvariantCulture)) ?? [null];
        return Offered(Append([.. places.Select(place => new ActionDone(inspection, check, place, "replaced", null))]));
    }

    private static Replacement? Offered(VehicleState state) => Replacement.Of(state, SheetLibrary.BuiltIn, state.WearParts[0]);

    private void Watch(string part, string fitted) => Append(
        new WearPartAdded(part, new(24, null, null), new(DateOnly.Parse(fitted, CultureInfo.InvariantCulture), 80000, "km")));

    private long Start() => Append(
        Written.Started(95000, "km")).OpenInspection!.Number;

    private VehicleState Append(params IReadOnlyList<EntryBody> entries) => _garage.Append("teasel", Tess, _ => entries);
}
