using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <summary>What an instrument can show of the values that are said to be read off it.</summary>
public class ShownTests
{
    private static readonly Accuracy Stated = new(0.8, 3);
    private static readonly Instrument Low = Meter("200 Ω", 200, 0.1);
    private static readonly Instrument High = Meter("20 kΩ", 20_000, 10);

    [Theory]
    [InlineData(0.3)] // In binary, 0.3 is no whole number of 0.1.
    [InlineData(0.7)]
    [InlineData(199.9)]
    [InlineData(200)]
    [InlineData(0)]
    public void Step_of_the_display_within_its_range_is_shown(double value)
    {
        Assert.IsType<Shown.Plainly>(By(Low, Units.Ohm, value));
    }

    [Fact]
    public void Value_over_full_scale_is_never_shown()
    {
        var never = Assert.IsType<Shown.Never>(By(Low, Units.Kilohm, 9400));

        Assert.Equal("9.4\u00a0kΩ is more than the 200 Ω range shows.", never.Problem);
        Assert.True(never.IsBeyondRange);
        Assert.IsType<Shown.Plainly>(By(High, Units.Kilohm, 9400));
        Assert.IsType<Shown.Never>(By(High, Units.Kilohm, 25_000));
        Assert.IsType<Shown.Never>(By(High, Units.Megohm, 9.4e6));
    }

    [Fact]
    public void One_repeat_over_full_scale_is_enough()
    {
        Assert.Contains("250\u00a0Ω is more", Assert.IsType<Shown.Never>(By(Low, Units.Ohm, 190, 250, 191)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void One_repeat_too_large_to_be_worked_with_is_enough() =>
        Assert.Equal(Workable.Problem, Assert.IsType<Shown.Never>(By(High with { Ranges = null }, Units.Ohm, 190, 2e15, 191)).Problem);

    [Fact]
    public void Value_between_steps_is_asked_about_with_both_neighbours()
    {
        var between = Assert.IsType<Shown.BetweenSteps>(By(Low, Units.Ohm, 0.8, 0.75, 0.7));

        Assert.Equal("Your meter shows steps of 0.1\u00a0Ω, not 0.75\u00a0Ω: was it 0.7\u00a0Ω or 0.8\u00a0Ω?", between.Question);
        Assert.Equal([[0.8, 0.7, 0.7], [0.8, 0.8, 0.7]], between.Choices);
    }

    [Fact]
    public void Several_values_between_steps_are_typed_anew()
    {
        var between = Assert.IsType<Shown.BetweenSteps>(By(Low, Units.Ohm, 0.75, 0.7, 0.82));

        Assert.Contains("not 0.75\u00a0Ω and 0.82\u00a0Ω. Type what it showed.", between.Question, StringComparison.Ordinal);
        Assert.Empty(between.Choices);
    }

    [Fact]
    public void Negative_voltage_has_neighbours_on_either_side()
    {
        var meter = Low with { Kind = QuantityKind.Voltage };

        Assert.Equal([[-0.8], [-0.7]], Assert.IsType<Shown.BetweenSteps>(By(meter, Units.Volt, -0.75)).Choices);
        Assert.IsType<Shown.Plainly>(By(meter, Units.Volt, -0.7));
        Assert.IsType<Shown.Never>(By(meter, Units.Volt, -201));
    }

    [Theory]
    [InlineData(QuantityKind.Resistance, true)]
    [InlineData(QuantityKind.Length, true)]
    [InlineData(QuantityKind.Speed, true)]
    [InlineData(QuantityKind.Voltage, false)]
    [InlineData(QuantityKind.Pressure, false)]
    public void Below_zero_is_never_shown_where_there_is_nothing_below(QuantityKind kind, bool isRefused)
    {
        var shown = By(new Instrument("one", "One", kind, Stated, 0.1), Units.BaseOf(kind), -0.1);

        Assert.Equal(isRefused, shown is Shown.Never);
    }

    [Fact]
    public void Number_in_a_unit_the_display_does_not_count_in_was_converted_and_is_taken()
    {
        var gauge = new Instrument("gauge", "Gauge", QuantityKind.Length, new(0, 1), 0.01);

        Assert.IsType<Shown.Plainly>(By(gauge, Units.Thou, 12 * 0.0254));
        Assert.IsType<Shown.BetweenSteps>(By(gauge, Units.Millimetre, 0.305));
    }

    [Fact]
    public void Gauge_that_counts_in_pounds_is_judged_in_pounds()
    {
        var psi = Units.Psi.InBaseUnit;
        var gauge = new Instrument("gauge", "Gauge", QuantityKind.Pressure, new(2, 0), 5 * psi);

        Assert.IsType<Shown.Plainly>(By(gauge, Units.Psi, 145 * psi));
        Assert.Contains("140\u00a0psi or 145\u00a0psi", Assert.IsType<Shown.BetweenSteps>(By(gauge, Units.Psi, 142 * psi)).Question, StringComparison.Ordinal);
        Assert.IsType<Shown.Plainly>(By(gauge, Units.Bar, 1000));
    }

    [Fact]
    public void Thermometer_in_Fahrenheit_is_judged_on_its_own_scale()
    {
        var thermometer = new Instrument("one", "One", QuantityKind.Temperature, new(0, 1), Units.Fahrenheit.InBaseUnit);

        Assert.IsType<Shown.Plainly>(By(thermometer, Units.Fahrenheit, Units.Fahrenheit.ToBase(69)));
        Assert.IsType<Shown.BetweenSteps>(By(thermometer, Units.Fahrenheit, Units.Fahrenheit.ToBase(69.5)));
    }

    [Fact]
    public void Meter_that_chooses_its_range_shows_what_any_of_them_shows()
    {
        var auto = Low with { Ranges = [.. High.Ranges!, .. Low.Ranges!], AutoRange = true };

        Assert.IsType<Shown.Plainly>(By(auto, Units.Kilohm, 9400));
        Assert.IsType<Shown.BetweenSteps>(By(auto, Units.Kilohm, 9404));
        Assert.IsType<Shown.Plainly>(By(auto, Units.Ohm, 150.4));
        Assert.Contains("than the 20 kΩ range", Assert.IsType<Shown.Never>(By(auto, Units.Kilohm, 25_000)).Problem, StringComparison.Ordinal);
        Assert.Equal("Meter, 20 kΩ range", auto.OnRangeFor([9400, 20]).Name);
        Assert.Equal(("Meter, 200 Ω range", 0.1), (auto.OnRangeFor([150, 20]).Name, auto.OnRangeFor([150, 20]).Resolution));
        Assert.Null(auto.OnRangeFor([150]).AutoRange);
    }

    [Fact]
    public void Range_in_use_of_a_meter_with_several_is_the_one_of_its_own_accuracy_and_step()
    {
        var several = High with { Ranges = [.. Low.Ranges!, .. High.Ranges!] };

        Assert.IsType<Shown.Plainly>(By(several, Units.Kilohm, 9400));
        Assert.IsType<Shown.Never>(By(several with { Resolution = 0.1 }, Units.Kilohm, 9400));
    }

    [Fact]
    public void Meter_without_a_range_on_file_shows_any_size()
    {
        Assert.IsType<Shown.Plainly>(By(Low with { Ranges = null }, Units.Megohm, 9.4e6));
    }

    [Fact]
    public void Assumed_steps_are_not_held_against_a_value()
    {
        Assert.IsType<Shown.Plainly>(Shown.By(Low, [new(0.75, Units.Ohm)], judgeSteps: false));
    }

    [Theory]
    [InlineData(1e16)]
    [InlineData(double.MaxValue)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_too_large_to_work_with_is_never_shown(double value)
    {
        Assert.False(Assert.IsType<Shown.Never>(By(Low with { Ranges = null }, Units.Ohm, value)).IsBeyondRange);
    }

    [Fact]
    public void Every_whole_number_of_steps_is_shown_and_every_half_is_not()
    {
        Gen.Select(Gen.Int[0, 19_999], Gen.Int[-6, 3], Gen.OneOf([1.0, 2.0, 2.5, 5.0]), Gen.OneOf([Units.Ohm, Units.Kilohm, Units.Megohm, Units.Milliohm]))
            .Sample((steps, place, figure, unit) =>
            {
                var step = (double)((decimal)figure * (decimal)Math.Pow(10, place));
                var meter = new Instrument("one", "One", QuantityKind.Resistance, Stated, unit.ToBase(step));
                double At(decimal count) => unit.ToBase((double)(count * (decimal)step));

                return By(meter, unit, At(steps)) is Shown.Plainly
                    && By(meter, unit, At(steps + 0.5m)) is Shown.BetweenSteps { Choices: [[var below], [var above]] }
                    && By(meter, unit, below) is Shown.Plainly && By(meter, unit, above) is Shown.Plainly;
            });
    }

    private static Instrument Meter(string range, double fullScale, double step) =>
        new("meter", "Meter", QuantityKind.Resistance, Stated, step) { Ranges = [new(range, fullScale, Stated, step)] };

    private static Shown By(Instrument instrument, Unit unit, params double[] values) =>
        Shown.By(instrument, [.. values.Select(value => new TypedNumber.Certain(value, unit))]);
}
