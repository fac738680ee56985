namespace InspectLog.Measuring.Tests;

public class TypedNumberTests
{
    // The coil secondary of a check measured in kΩ.
    private static readonly PlausibleSpan Secondary = new(1_000, 100_000);

    // A coil circuit of a few ohms.
    private static readonly PlausibleSpan Circuit = new(0.1, 20);

    private static readonly PlausibleSpan Gap = new(0.05, 2);

    private static readonly PlausibleSpan Supply = new(0, 20);

    private static readonly PlausibleSpan Timing = new(-30, 60);

    private static TypedNumber Resistance(string text, Unit? field = null) =>
        TypedNumber.Read(text, QuantityKind.Resistance, field ?? Units.Kilohm, Secondary);

    private static TypedNumber Length(string text) =>
        TypedNumber.Read(text, QuantityKind.Length, Units.Millimetre, Gap);

    private static TypedNumber Voltage(string text) =>
        TypedNumber.Read(text, QuantityKind.Voltage, Units.Volt, Supply);

    private static TypedNumber Angle(string text) =>
        TypedNumber.Read(text, QuantityKind.Angle, Units.Degree, Timing);

    private static void IsCertain(double expected, TypedNumber actual) =>
        Assert.Equal(expected, Assert.IsType<TypedNumber.Certain>(actual).BaseValue);

    private static void IsRefused(string reason, TypedNumber actual) =>
        Assert.Contains(reason, Assert.IsType<TypedNumber.Refused>(actual).Message, StringComparison.Ordinal);

    private static void IsAsked(double[] expected, TypedNumber actual) =>
        Assert.Equal(expected, Assert.IsType<TypedNumber.Ambiguous>(actual).Choices.Select(choice => choice.BaseValue));

    [Theory]
    [InlineData("9.4")]
    [InlineData("9.4k")]
    [InlineData("9.4 K")]
    [InlineData("9,4 k")]
    [InlineData("9k4")]
    [InlineData("9k4Ω")]
    [InlineData("9k4 ohms")]
    [InlineData("9k400")]
    [InlineData("9.4 kΩ")]
    [InlineData("9.4 KOhm")]
    [InlineData("9.4 kilohms")]
    [InlineData("9400 ohms")]
    [InlineData("9400R")]
    [InlineData("9,400")]
    [InlineData("9.400")]
    [InlineData("9 400 Ω")]
    [InlineData("9'400 Ω")]
    [InlineData("9.4e3 Ω")]
    [InlineData("0.0094M")]
    [InlineData("+9.4")]
    [InlineData("  9.4  ")]
    [InlineData("９．４")]
    [InlineData("９.４ｋ")]
    [InlineData("9.4\u00A0k\u2126")]
    [InlineData("٩.٤")]
    public void Nine_point_four_kilohm_is_read_however_it_is_written(string text) => IsCertain(9400, Resistance(text));

    [Theory]
    [InlineData("1,5", 1.5)]
    [InlineData("1.5", 1.5)]
    [InlineData("1R5", 1.5)]
    [InlineData("R47", 0.47)]
    [InlineData(".3", 0.3)]
    [InlineData(",3", 0.3)]
    [InlineData("0,600", 0.6)]
    [InlineData("1,500", 1.5)]
    [InlineData("1.500", 1.5)]
    [InlineData("1500 mΩ", 1.5)]
    [InlineData("1,234.5 mΩ", 1.2345)]
    [InlineData("1.234,5 mΩ", 1.2345)]
    [InlineData("1 234,5 mΩ", 1.2345)]
    [InlineData("0", 0)]
    public void Small_resistance_is_read_as_meant(string text, double expected) =>
        IsCertain(expected, TypedNumber.Read(text, QuantityKind.Resistance, Units.Ohm, Circuit));

    [Theory]
    [InlineData("12 thou", 0.3048)]
    [InlineData("12thou", 0.3048)]
    [InlineData("0.3mm", 0.3)]
    [InlineData("0,3 mm", 0.3)]
    [InlineData("0.012 in", 0.3048)]
    [InlineData("0.012\"", 0.3048)]
    [InlineData("0.012″", 0.3048)]
    [InlineData("12 mil", 0.3048)]
    [InlineData("0.3 mil", 0.3)]
    public void Gap_is_read_in_either_system(string text, double expected) => IsCertain(expected, Length(text));

    [Theory]
    [InlineData("12.6", 12.6)]
    [InlineData("12V6", 12.6)]
    [InlineData("12,6 volts", 12.6)]
    [InlineData("350mV", 0.35)]
    [InlineData("350 m", 0.35)]
    [InlineData("−2", -2)]
    [InlineData("-2", -2)]
    [InlineData("–2 V", -2)]
    [InlineData("-0", 0)]
    public void Voltage_is_read_with_its_sign(string text, double expected) => IsCertain(expected, Voltage(text));

    [Theory]
    [InlineData("10", 10)]
    [InlineData("10°", 10)]
    [InlineData("10 deg", 10)]
    [InlineData("10 BTDC", 10)]
    [InlineData("10° before TDC", 10)]
    [InlineData("2 ATDC", -2)]
    [InlineData("2 degrees after", -2)]
    [InlineData("−2", -2)]
    public void Timing_is_read_with_its_side_of_top_dead_centre(string text, double expected) =>
        IsCertain(expected, Angle(text));

    [Theory]
    [InlineData("4.5 amps", QuantityKind.Current, 4.5)]
    [InlineData("450 m", QuantityKind.Current, 0.45)]
    [InlineData("750 rpm", QuantityKind.Speed, 750)]
    [InlineData("750 r/min", QuantityKind.Speed, 750)]
    [InlineData("68°F", QuantityKind.Temperature, 20)]
    [InlineData("−5 ℃", QuantityKind.Temperature, -5)]
    [InlineData("20 deg C", QuantityKind.Temperature, 20)]
    [InlineData("1 bar", QuantityKind.Pressure, 100)]
    [InlineData("-0.5 bar", QuantityKind.Pressure, -50)]
    [InlineData("25 Nm", QuantityKind.Torque, 25)]
    [InlineData("20 ft-lb", QuantityKind.Torque, 27.1163590)]
    [InlineData("20 lbf·ft", QuantityKind.Torque, 27.1163590)]
    [InlineData("20 ft.lbs", QuantityKind.Torque, 27.1163590)]
    [InlineData("1 lb/in²", QuantityKind.Pressure, 6.89475729)]
    [InlineData("750 r.p.m.", QuantityKind.Speed, 750)]
    [InlineData("62137.1 miles", QuantityKind.Distance, 99999.9691)]
    [InlineData("220n", QuantityKind.Capacitance, 0.22)]
    [InlineData("0.22 uF", QuantityKind.Capacitance, 0.22)]
    [InlineData("0.22 mfd", QuantityKind.Capacitance, 0.22)]
    [InlineData("8.2 μF", QuantityKind.Capacitance, 8.2)]
    [InlineData("8,5 mH", QuantityKind.Inductance, 8.5)]
    public void Every_kind_is_read_in_its_units(string text, QuantityKind kind, double expected) =>
        Close.ToDigits(
            expected,
            Assert.IsType<TypedNumber.Certain>(
                TypedNumber.Read(text, kind, Units.BaseOf(kind), new PlausibleSpan(-50, 35))).BaseValue,
            9);

    [Fact]
    public void Degrees_without_their_scale_are_asked_about() =>
        IsAsked([30, -1.1111111111111112], TypedNumber.Read(
            "30 deg", QuantityKind.Temperature, Units.Celsius, new PlausibleSpan(-20, 120)));

    [Fact]
    public void Unit_is_the_one_typed_or_else_the_field_s()
    {
        Assert.Same(Units.Ohm, Assert.IsType<TypedNumber.Certain>(Resistance("9400 ohm")).Unit);
        Assert.Same(Units.Kilohm, Assert.IsType<TypedNumber.Certain>(Resistance("9.4")).Unit);
    }

    [Fact]
    public void Thousands_or_decimal_is_asked_where_both_could_be()
    {
        var wide = new PlausibleSpan(1, 100_000);

        IsAsked([9400, 9.4], TypedNumber.Read("9,400", QuantityKind.Resistance, Units.Ohm, wide));
        IsAsked([9.4, 9400], TypedNumber.Read("9.400", QuantityKind.Resistance, Units.Ohm, wide));
    }

    [Fact]
    public void Thousands_or_decimal_is_asked_where_neither_could_be() =>
        IsAsked([9_400_000, 9_400_000_000], Resistance("9.400 M"));

    [Fact]
    public void Number_that_only_fits_another_unit_is_asked_about()
    {
        IsAsked([9400, 9.4], Resistance("9.4", Units.Ohm));
        IsAsked([0.3048, 12], Length("12"));
        IsAsked([0.3048, 0.012], Length("0.012"));
    }

    [Fact]
    public void Question_names_the_choices_likeliest_first()
    {
        var asked = Assert.IsType<TypedNumber.Ambiguous>(Length("12"));

        Assert.Equal("Do you mean 12\u00A0thou or 12\u00A0mm?", asked.Question);
    }

    [Fact]
    public void Small_or_large_m_is_asked_about() => IsAsked([5_000_000, 0.005], Resistance("5m"));

    [Fact]
    public void Value_beyond_the_plausible_span_is_taken_as_typed_when_its_unit_was_said()
    {
        IsCertain(9.4, Resistance("9.4 Ω"));
        IsCertain(940_000, Resistance("940"));
    }

    [Theory]
    [InlineData("", "Type the value")]
    [InlineData("   ", "Type the value")]
    [InlineData("NaN", "not a number")]
    [InlineData("about 9", "not a number")]
    [InlineData("~9.4", "not a number")]
    [InlineData("k", "not a number")]
    [InlineData("½", "not a number")]
    [InlineData("1e400", "too large")]
    [InlineData("1e308 M", "too large")]
    [InlineData("1e-400", "too small")]
    [InlineData("1e99999", "one number at a time")]
    [InlineData("3/4?", "decimal number")]
    [InlineData("3/4", "decimal number")]
    [InlineData("9.4-9.6", "one number at a time")]
    [InlineData("9.4 ± 0.1", "one number at a time")]
    [InlineData("9.4 k 9.5 k", "one number at a time")]
    [InlineData("1,2k4", "one number at a time")]
    [InlineData("9.4, 9.5", "do not fit one number")]
    [InlineData("9, 400", "do not fit one number")]
    [InlineData("1,23.5", "do not fit one number")]
    [InlineData("1.2.3", "do not fit one number")]
    [InlineData("1,2345,678", "do not fit one number")]
    [InlineData("0,234.5", "do not fit one number")]
    [InlineData("9 4", "do not fit one number")]
    [InlineData("1..5", "do not fit one number")]
    [InlineData("9 400.5 1", "do not fit one number")]
    [InlineData("9.", "stops at its decimal mark")]
    [InlineData("9,", "stops at its decimal mark")]
    [InlineData("12 V", "unit of voltage")]
    [InlineData("9V4", "unit of voltage")]
    [InlineData("5 mm", "unit of length")]
    [InlineData("9.4 bananas", "not a unit this check knows")]
    [InlineData("9.4k?", "not a unit this check knows")]
    [InlineData("5²", "not a unit this check knows")]
    [InlineData("50%", "not a unit this check knows")]
    [InlineData("−2", "below zero")]
    [InlineData("OL", "beyond its range")]
    [InlineData("O.L", "beyond its range")]
    [InlineData("0L", "beyond its range")]
    [InlineData("0.L", "beyond its range")]
    [InlineData("∞", "beyond its range")]
    [InlineData("infinity", "beyond its range")]
    public void Anything_else_is_refused_with_what_to_do(string text, string reason) =>
        IsRefused(reason, Resistance(text));

    [Theory]
    [InlineData("-2 ATDC", "not both")]
    [InlineData("2 sideways", "not a unit")]
    public void Timing_that_makes_no_sense_is_refused(string text, string reason) => IsRefused(reason, Angle(text));

    [Fact]
    public void Letter_of_another_kind_is_refused_for_a_length() => IsRefused("not a unit", Length("3k5"));

    [Theory]
    [InlineData('9')]
    [InlineData('x')]
    [InlineData(',')]
    [InlineData('\u0000')]
    [InlineData('\uD800')]
    public void Five_hundred_characters_of_rubbish_get_a_short_answer(char rubbish)
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance(new string(rubbish, 500)));

        Assert.Contains("too long", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Message_quotes_no_more_than_it_can_hold()
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance("9.4 " + new string('x', 50)));

        Assert.DoesNotContain(new string('x', 21), refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Message_for_a_wrong_unit_says_which_fit()
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance("12 V"));

        Assert.Equal(
            "V is a unit of voltage, but this check measures resistance in Ω, kΩ, MΩ or mΩ. "
            + "Type that value, or choose the other check.",
            refused.Message);
    }

    [Fact]
    public void Field_unit_of_another_kind_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => TypedNumber.Read("1", QuantityKind.Length, Units.Volt, Gap));
}
