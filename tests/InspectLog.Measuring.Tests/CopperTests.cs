namespace InspectLog.Measuring.Tests;

public class CopperTests
{
    // R·(K + t₂)/(K + t₁): K = 235 of IEC 60034-1 (M), 234.5 for annealed copper (seen in print), α = 0.00393 at 20 °C.
    [Theory]
    [InlineData(3.00, 20, 80, 235, 3.705882, 6)]
    [InlineData(3.00, 20, 80, 234.5, 3.707269, 6)]
    [InlineData(1.50, 25, 90, 235, 1.875000, 6)]
    [InlineData(1.50, 25, 90, 234.5, 1.875723, 6)]
    [InlineData(8200, 20, 85, 235, 10290.196, 3)]
    [InlineData(8200, 20, 85, 234.5, 10294.303, 3)]
    [InlineData(3.70, 80, 20, 235, 2.995238, 6)]
    public void Resistance_is_referred_by_the_inferred_zero(
        double resistance, double at, double to, double zero, double expected, int decimals)
    {
        var (value, u) = Copper.Refer(resistance, 0, new WindingTemperature(at, to, 0, zero));

        Close.ToDecimals(expected, value, decimals);
        Assert.Equal(0, u);
    }

    [Fact]
    public void Resistance_is_referred_by_a_temperature_coefficient()
    {
        var zero = Copper.InferredZeroOf(0.00393);

        Close.ToDecimals(3.707400, Copper.Refer(3, 0, new(20, 80, 0, zero)).Value, 6);
        Close.ToDecimals(2.994012, Copper.Refer(3.70, 0, new(80, 20, 0, zero)).Value, 6);
        Close.ToDecimals(234.5, zero, 1);
    }

    // NBS Circular 31, Table II (M).
    [Theory]
    [InlineData(0, 0.00426525)]
    [InlineData(15, 0.00400877)]
    [InlineData(20, 0.00393)]
    [InlineData(25, 0.00385426)]
    [InlineData(30, 0.00378139)]
    [InlineData(50, 0.00351552)]
    public void Temperature_coefficient_agrees_with_NBS_Circular_31(double temperature, double alpha) =>
        Close.ToDecimals(alpha, Copper.Alpha(temperature, Copper.InferredZeroOf(0.00393)), 8);

    // AWG table of hyperphysics.phy-astr.gsu.edu (after Floyd), Ω per 1000 ft at 20 °C; it rounds to four digits.
    [Theory]
    [InlineData(10, 0.9989)]
    [InlineData(18, 6.385)]
    [InlineData(20, 10.15)]
    [InlineData(24, 25.67)]
    [InlineData(30, 103.2)]
    [InlineData(36, 414.8)]
    [InlineData(38, 659.6)]
    [InlineData(40, 1049)]
    public void Wire_agrees_with_a_gauge_table(int gauge, double ohmsPerThousandFeet) =>
        Assert.InRange(CopperWire.ResistancePerMetre(gauge) * 304.8 / ohmsPerThousandFeet, 0.9995, 1.0005);

    // TM 9-8000, figure 15-5: a coil's primary is about 0.04 in (no. 18), its secondary about 0.004 in (no. 38). Gauges
    // 36 and 0000 define the series: 0.0050 in and 0.46 in (ASTM B258, from memory).
    [Theory]
    [InlineData(18, 0.0403, 4)]
    [InlineData(38, 0.0040, 4)]
    [InlineData(36, 0.005, 6)]
    [InlineData(-3, 0.46, 6)]
    public void Wire_is_as_thick_as_its_gauge(int gauge, double inches, int decimals) =>
        Close.ToDecimals(inches, Units.Inch.FromBase(CopperWire.Diameter(gauge)), decimals);

    [Fact]
    public void Wire_has_more_resistance_when_hot() =>
        Close.ToDigits(
            CopperWire.ResistancePerMetre(38) * (234.5 + 80) / 254.5, CopperWire.ResistancePerMetre(38, 80), 13);

    [Theory]
    [InlineData(-4)]
    [InlineData(51)]
    public void Gauge_there_is_not_is_refused(int gauge) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CopperWire.Diameter(gauge));

    // IEC 60034-1, 8.6.2 (M): 3.00 Ω at 20 °C, 3.60 Ω hot, coolant at 22 °C: a rise of 49.0 K.
    [Fact]
    public void Hot_winding_s_temperature_agrees_with_IEC_60034() =>
        Close.ToDecimals(49.0, Copper.TemperatureOf(3.00, 20, 3.60) - 22, 9);

    [Fact]
    public void Uncertainty_of_the_temperature_goes_into_the_referred_value()
    {
        // 8.4 kΩ at 65 °C: 7.14 kΩ at 20 °C. Each degree is 1/300 of it; ±3 °C is 1.732 °C.
        var (value, u) = Copper.Refer(8400, 30, new WindingTemperature(65, 20, 3));

        Close.ToDigits(7140, value, 14);
        Close.ToDigits(Math.Sqrt((25.5 * 25.5) + (7140.0 / 300 * 7140 / 300 * 3)), u, 12);
    }

    [Fact]
    public void Limits_are_moved_to_the_temperature_measured_at()
    {
        var limits = Copper.Refer(Limits.Of(8000, 13000), 20, 65);

        Close.ToDigits(8000 * 300.0 / 255, limits.Lower.GetValueOrDefault(), 14);
        Close.ToDigits(13000 * 300.0 / 255, limits.Upper.GetValueOrDefault(), 14);
        Assert.Null(Copper.Refer(Limits.Of(8000, null), 20, 65).Upper);
    }

    [Fact]
    public void Reading_or_limits_referred_decide_alike()
    {
        var reading = Some.Reading([8400], 0.8, 3, 10);
        var referred = ConformityRule.Decide(
            reading with { Winding = new(65, 20, 0) }, Limits.Of(8000, 13000));
        var limits = ConformityRule.Decide(reading, Copper.Refer(Limits.Of(8000, 13000), 20, 65));

        Assert.Equal(Decision.Fail, referred.Decision);
        Assert.Equal(limits.Decision, referred.Decision);
        Assert.Equal(limits.ProbabilityOfConformity, referred.ProbabilityOfConformity, 1e-12);
        Close.ToDigits(7140, referred.Value, 14);
    }

    [Fact]
    public void Winding_temperature_is_a_line_of_the_budget()
    {
        var estimate = Estimate.Of(Some.Reading([8400], 0.8, 3, 10) with { Winding = new(65, 20, 3) });
        var (value, u) = Copper.Refer(
            8400, Estimate.Of(Some.Reading([8400], 0.8, 3, 10)).StandardUncertainty, new(65, 20, 3));

        Close.ToDigits(value, estimate.Value, 14);
        Close.ToDigits(u, estimate.StandardUncertainty, 12);
        Close.ToDigits(
            7140.0 / 300 * Math.Sqrt(3),
            estimate.Contributions.Single(c => c.Name == "winding temperature").StandardUncertainty,
            12);
    }

    [Theory]
    [InlineData(-61, 20, 0, 235, "−60 and 300")]
    [InlineData(20, 301, 0, 235, "−60 and 300")]
    [InlineData(double.NaN, 20, 0, 235, "−60 and 300")]
    [InlineData(20, 65, -1, 235, "0 or more")]
    [InlineData(20, 65, double.NaN, 235, "0 or more")]
    [InlineData(20, 65, 0, 0, "near 235")]
    public void Temperatures_out_of_range_are_refused(double at, double to, double half, double zero, string reason)
    {
        var winding = new WindingTemperature(at, to, half, zero);

        Assert.Contains(
            reason, Assert.Throws<ArgumentException>(() => Copper.Refer(1, 0, winding)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Estimate.Of(Some.With(1, 0.1) with { Winding = winding }));
    }

    [Fact]
    public void Resistances_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Copper.Refer(-1, 0, new(20, 65, 0)));
        Assert.Throws<ArgumentException>(() => Copper.Refer(1, -1, new(20, 65, 0)));
        Assert.Throws<ArgumentException>(() => Copper.TemperatureOf(0, 20, 1));
        Assert.Throws<ArgumentException>(() => Copper.TemperatureOf(1, 20, double.PositiveInfinity));
    }
}
