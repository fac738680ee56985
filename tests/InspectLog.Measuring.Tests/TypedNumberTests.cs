namespace InspectLog.Measuring.Tests;

public partial class TypedNumberTests
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
    [InlineData("12.5 s", QuantityKind.Time, 12.5)]
    [InlineData("1.5 min", QuantityKind.Time, 90)]
    [InlineData("250 ms", QuantityKind.Time, 0.25)]
    [InlineData("18%", QuantityKind.Ratio, 18)]
    [InlineData("18 per cent", QuantityKind.Ratio, 18)]
    [InlineData("1.26 g/cm³", QuantityKind.Density, 1.26)]
    [InlineData("1260 kg/m3", QuantityKind.Density, 1.26)]
    public void Every_kind_is_read_in_its_units(string text, QuantityKind kind, double expected) =>
        Close.ToDigits(
            expected,
            Assert.IsType<TypedNumber.Certain>(
                TypedNumber.Read(text, kind, Units.BaseOf(kind), new PlausibleSpan(-50, 35))).BaseValue,
            9);
}
