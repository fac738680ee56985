using InspectLog.App.Bench;
using InspectLog.App.Tests.Bench;
using InspectLog.App.Trends;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Trends;

/// <summary>Which readings belong to a trend, and what it says of the future.</summary>
public sealed class TrendFactsTests
{
    private const string Coil = "coil-circuit-resistance"; // 0.6 to 2.0 Ω by the sheet
    private static readonly DateTimeOffset First = new(2020, 1, 1, 9, 0, 0, TimeSpan.Zero);
    private static readonly DateTimeOffset Now = First.AddYears(7);

    [Fact]
    public void Place_read_in_one_inspection_only_has_no_trend() =>
        Assert.Empty(TrendSeries.Of(Read(Coil, [1.2]), SheetLibrary.BuiltIn));

    [Fact]
    public void Last_reading_of_each_inspection_counts()
    {
        var vehicle = new History().Inspect(0, read: [(Coil, null, 9.9), (Coil, null, 1.2)]).Inspect(1, read: [(Coil, null, 1.3)]).Vehicle;

        Assert.Equal([1.2, 1.3], Assert.Single(TrendSeries.Of(vehicle, SheetLibrary.BuiltIn)).Readings.Select(reading => reading.Value));
    }

    [Fact]
    public void Lead_replaced_by_its_condition_check_starts_anew_and_its_neighbours_go_on()
    {
        var vehicle = new History()
            .Inspect(0, read: [("lead-resistance", 1, 6000), ("lead-resistance", 2, 7000)])
            .Inspect(1, read: [("lead-resistance", 1, 9000), ("lead-resistance", 2, 7100)], act: [("lead-condition", 1, "replaced")])
            .Inspect(2, read: [("lead-resistance", 1, 6100), ("lead-resistance", 2, 7200)])
            .Vehicle;

        Assert.Equal([true, true, false], Hollow(vehicle, "lead-resistance", 1));
        Assert.Equal([false, false, false], Hollow(vehicle, "lead-resistance", 2));
        Assert.Contains(
            "drawn hollow", string.Join(' ', TrendWords.InFull(Of(vehicle, "lead-resistance", 1))), StringComparison.Ordinal);
    }

    [Fact]
    public void Adjusting_one_check_leaves_the_others_of_the_part_alone()
    {
        var vehicle = new History()
            .Inspect(0, read: [("plug-gap", 1, 0.8)])
            .Inspect(1, read: [("plug-gap", 1, 0.9)], act: [("plug-condition", 1, "adjusted")])
            .Inspect(2, read: [("plug-gap", 1, 0.95)], act: [("plug-gap", 1, "adjusted")])
            .Inspect(3, read: [("plug-gap", 1, 0.8)])
            .Vehicle;

        Assert.Equal([true, true, true, false], Hollow(vehicle, "plug-gap", 1));
    }

    [Theory]
    [InlineData("plug-gap", "adjusted")]
    [InlineData("plug-condition", "replaced")]
    public void Reading_alone_since_the_part_became_another_says_what_was_done_to_it(string check, string action)
    {
        var vehicle = new History()
            .Inspect(0, read: [("plug-gap", 3, 0.8)], act: [(check, 3, action)])
            .Inspect(1, read: [("plug-gap", 3, 0.9)])
            .Vehicle;
        var facts = Of(vehicle, "plug-gap", 3);
        Assert.EndsWith($" since it was {action}", TrendWords.Values(facts), StringComparison.Ordinal);
        Assert.Contains($"It was {action} in between.", string.Join(' ', TrendWords.InFull(facts)), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_replaced_and_not_read_since_has_no_trend()
    {
        var vehicle = new History()
            .Inspect(0, read: [(Coil, null, 1.2)])
            .Inspect(1, read: [(Coil, null, 1.3)], act: [(Coil, null, "replaced")])
            .Vehicle;

        Assert.Empty(TrendsView.Of(vehicle, SheetLibrary.BuiltIn, null, Now).All);
    }

    [Theory]
    [InlineData(new[] { 1.2, 1.3 }, nameof(Outlook.NothingForetold))]
    [InlineData(new[] { 1.2, 1.2, 1.2, 1.2, 1.2 }, nameof(Outlook.NothingForetold))]
    [InlineData(new[] { 1.2, 1.4, 1.2, 1.3, 1.2 }, nameof(Outlook.NothingForetold))]
    [InlineData(new[] { 1.2, 1.4, 1.6, 1.8, 2.1 }, nameof(Outlook.BeyondAlready))]
    [InlineData(new[] { 1.20, 1.41, 1.59, 1.80, 1.99 }, nameof(Outlook.AnyTimeNow))]
    [InlineData(new[] { 1.001, 1.099, 1.201, 1.299, 1.401, 1.499, 1.601 }, nameof(Outlook.Ahead))]
    [InlineData(new[] { 1.001, 1.049, 1.101, 1.149, 1.201 }, nameof(Outlook.AheadAsAHint))]
    [InlineData(new[] { 1.0001, 1.0029, 1.0061, 1.0089, 1.0121 }, nameof(Outlook.FarOff))]
    public void Outlook_is_said_as_carefully_as_the_readings_allow(double[] values, string outlook)
    {
        var facts = TrendFacts.Of(TrendSeries.Of(Read(Coil, values), SheetLibrary.BuiltIn)[0], TrendAxis.Date, First.AddYears(values.Length - 1).AddDays(1));

        Assert.Equal(outlook, facts.Outlook.ToString());
        Assert.NotEqual("", TrendWords.InBrief(facts));
        Assert.All(TrendWords.InFull(facts), sentence => Assert.EndsWith(".", sentence, StringComparison.Ordinal));
    }

    /// <summary>Readings on a line of exactly 0.1 Ω a year from 1.0 Ω meet 2.0 Ω after ten years; the edge of a band
    /// without scatter meets it there as well.</summary>
    [Fact]
    public void Readings_on_a_line_meet_the_limit_where_the_line_does()
    {
        var days = 365.25;
        var vehicle = new History();
        for (var year = 0; year < 6; year++)
        {
            vehicle.InspectAt(First.AddDays(year * days), null, [(Coil, null, 1 + (0.1 * year))], []);
        }

        var facts = TrendFacts.Of(TrendSeries.Of(vehicle.Vehicle, SheetLibrary.BuiltIn)[0], TrendAxis.Date, First.AddDays(5 * days));

        Assert.Equal(TrendAxis.At(First.AddDays(10 * days)), facts.Trend.MeetsLimitAt!.Value, 0.01);
        Assert.Contains("in about December 2029", TrendWords.InFull(facts)[0], StringComparison.Ordinal);
        Assert.StartsWith("0.10", TrendWords.Slope(facts), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_very_many_inspections_the_last_readings_make_the_trend()
    {
        var series = Assert.Single(TrendSeries.Of(Read(Coil, [.. Enumerable.Range(0, TrendSeries.Most + 5).Select(at => 1 + (at / 1000.0))]), SheetLibrary.BuiltIn));

        Assert.Equal(TrendSeries.Most, series.Readings.Count);
        Assert.Equal([1.005, 1.204], new[] { series.Readings[0].Value, series.Readings[^1].Value });
    }

    [Fact]
    public void Odometer_is_offered_only_where_every_inspection_has_it()
    {
        var noted = new History().Inspect(0, 80_000, [(Coil, null, 1.2)]).Inspect(1, 90_000, [(Coil, null, 1.3)]);
        Assert.True(TrendsView.Of(noted.Vehicle, SheetLibrary.BuiltIn, "odometer", Now) is { CanGoByOdometer: true, Axis.Odometer: not null });

        var gap = noted.Inspect(2, null, [(Coil, null, 1.3)]);
        Assert.True(TrendsView.Of(gap.Vehicle, SheetLibrary.BuiltIn, "odometer", Now) is { CanGoByOdometer: false, Axis.Odometer: null });
    }

    [Fact]
    public void Miles_and_kilometres_go_on_one_axis()
    {
        var axis = new TrendAxis(Units.Kilometre);
        var vehicle = new History().Inspect(0, 10_000, [], unit: "mi").Vehicle;

        Assert.Equal(16_093.44, axis.At(vehicle.Inspections[0]), 1e-6);
        Assert.Equal("16 100 km", axis.About(16_093.44).Replace('\u00a0', ' '));
    }

    private static VehicleState Read(string check, double[] values)
    {
        var history = new History();
        for (var i = 0; i < values.Length; i++)
        {
            history.Inspect(i, read: [(check, null, values[i])]);
        }

        return history.Vehicle;
    }

    private static TrendFacts Of(VehicleState vehicle, string check, int? cylinder) =>
        TrendFacts.Of(TrendSeries.Find(vehicle, SheetLibrary.BuiltIn, check, cylinder)!, TrendAxis.Date, Now);

    private static IEnumerable<bool> Hollow(VehicleState vehicle, string check, int? cylinder) =>
        TrendSeries.Find(vehicle, SheetLibrary.BuiltIn, check, cylinder)!.Readings.Select(reading => reading.IsOfAnEarlierPart);

    /// <summary>Writes a vehicle's journal, one inspection a year.</summary>
    private sealed class History
    {
        private static readonly CheckSheet Sheet = BuiltInSheets.All[0];

        public VehicleState Vehicle { get; private set; } = VehicleState.Before("teasel");

        public History Inspect(
            int year,
            double? odometer = null,
            (string Check, int? Cylinder, double Value)[]? read = null,
            (string Check, int? Cylinder, string Action)[]? act = null,
            string unit = "km") =>
            InspectAt(First.AddYears(year), odometer, read ?? [], act ?? [], unit);

        public History InspectAt(
            DateTimeOffset time,
            double? odometer,
            (string Check, int? Cylinder, double Value)[] read,
            (string Check, int? Cylinder, string Action)[] act,
            string unit = "km")
        {
            var number = Vehicle.NextSequence;
            Add(time, new InspectionStarted(Sheet.Id, Sheet.Version, Sheet.Sha256, "Tess Okafor", odometer, odometer is null ? null : unit));
            foreach (var (check, cylinder, value) in read)
            {
                var reading = new DisplayedReading([value], new Accuracy(0.5, 1), 0.01);
                Add(time, new ReadingDecided(number, check, cylinder, reading, "", null, null, null, []));
            }

            foreach (var (check, cylinder, action) in act)
            {
                Add(time, new ActionDone(number, check, cylinder, action, null));
            }

            Add(time, new InspectionClosed(number));
            return this;
        }

        private void Add(DateTimeOffset time, EntryBody body) =>
            Vehicle = Vehicle.Apply(Written.Entry(Vehicle.NextSequence, time, body));
    }
}
