using CsCheck;
using InspectLog.App.Wear;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Wear;

/// <summary>When a part is due: by date, by distance, whichever comes first.</summary>
public sealed class WearDueTests
{
    private static readonly DateOnly Fitted = new(2024, 8, 31);

    [Theory]
    [InlineData("2026-08-30", false)]
    [InlineData("2026-08-31", true)]
    [InlineData("2027-01-01", true)]
    public void Part_is_due_on_the_day_its_months_are_over(string today, bool due) =>
        Assert.Equal(due, WearDue.Of(Part(24, null), Day(today), null).IsDue);

    /// <summary>Six months after 31 August is the last day of February.</summary>
    [Fact]
    public void Months_that_end_on_a_day_the_calendar_does_not_have_end_on_its_last() =>
        Assert.Equal(new DateOnly(2025, 2, 28), WearDue.Of(Part(6, null), Fitted, null).On);

    [Theory]
    [InlineData(99_999, false)]
    [InlineData(100_000, true)]
    [InlineData(104_000, true)]
    public void Part_is_due_when_its_distance_is_driven(double odometer, bool due) =>
        Assert.Equal(due, WearDue.Of(Part(null, 20_000), Fitted, At(odometer)).IsDue);

    [Fact]
    public void Whichever_comes_first_makes_it_due()
    {
        var byDate = WearDue.Of(Part(24, 20_000), Day("2026-09-01"), At(81_000));
        var byDistance = WearDue.Of(Part(24, 20_000), Day("2025-01-01"), At(100_500));

        Assert.Equal("Plugs: due since 31 August 2026", WearWords.Attention(Part(24, 20_000), byDate));
        Assert.Equal("Due for 500 km.", WearWords.Due(byDistance).Replace('\u00a0', ' '));
    }

    [Fact]
    public void Nothing_is_due_before_either()
    {
        var due = WearDue.Of(Part(24, 20_000), Day("2025-01-01"), At(88_412));

        Assert.Null(WearWords.Attention(Part(24, 20_000), due));
        Assert.Equal(
            "Due on 31 August 2026 or at 100 000 km (11 588 km to go).", WearWords.Due(due).Replace('\u00a0', ' '));
    }

    /// <summary>A mile is 1.609344 km exactly: 10 000 miles after 80 000 km is 59 709.7 miles.</summary>
    [Fact]
    public void Distance_in_another_unit_than_the_odometer_is_converted()
    {
        var part = new WearPart(1, "Plugs", new(null, 10_000, "mi"), [new(Fitted, 80_000, "km")]);

        var due = WearDue.Of(part, Fitted, At(96_094));

        Assert.Equal(59_709.7, due.At!.Value, 0.1);
        Assert.True(due.IsDue);
        Assert.False(WearDue.Of(part, Fitted, At(96_093)).IsDue);
        Assert.True(WearDue.Of(part, Fitted, new(Fitted, 59_710, Units.Mile)).IsDue);
    }

    [Fact]
    public void Unknown_odometer_at_fitting_leaves_the_date_and_says_so()
    {
        var part = new WearPart(1, "Plugs", new(24, 20_000, "km"), [new(Fitted, null, null)]);

        var due = WearDue.Of(part, Fitted, At(300_000));

        Assert.False(due.IsDue);
        Assert.Equal((null, new DateOnly(2026, 8, 31)), (due.At, due.On));
        Assert.NotNull(due.Doubt);
    }

    [Fact]
    public void Odometer_below_the_one_at_fitting_is_doubted() =>
        Assert.NotNull(WearDue.Of(Part(null, 20_000), Fitted, At(79_000)).Doubt);

    [Fact]
    public void Odometer_never_noted_again_leaves_the_distance_open()
    {
        var due = WearDue.Of(Part(null, 20_000), Fitted, null);

        Assert.Equal((100_000, null, null), (due.At, due.DistanceLeft, due.Doubt));
        Assert.Equal("Due at 100 000 km.", WearWords.Due(due).Replace('\u00a0', ' '));
    }

    [Fact]
    public void Part_with_no_distance_known_and_no_months_is_never_called_due() =>
        Assert.Equal("Not known when it is due.", WearWords.Due(WearDue.Of(
            new WearPart(1, "Plugs", new(null, 20_000, "km"), [new(Fitted, null, null)]), Fitted, null)));

    /// <summary>Time and distance only go forward, so a due part stays due.</summary>
    [Fact]
    public void Due_part_stays_due() => Gen.Select(Gen.Int[1, 1200], Gen.Int[1, 500_000], Gen.Int[0, 20_000], Gen.Int[0, 500_000])
        .Sample((months, distance, days, driven) =>
        {
            var part = Part(months, distance);
            var now = WearDue.Of(part, Fitted.AddDays(days), At(80_000 + driven));
            var later = WearDue.Of(part, Fitted.AddDays(days + 1), At(80_001 + driven));
            Assert.True(!now.IsDue || later.IsDue);
        });

    private static WearPart Part(int? months, double? distance) =>
        new(1, "Plugs", new(months, distance, distance is null ? null : "km"), [new(Fitted, 80_000, "km")]);

    private static KnownOdometer At(double reading) => new(Fitted, reading, Units.Kilometre);

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");
}
