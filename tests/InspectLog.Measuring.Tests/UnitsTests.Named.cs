namespace InspectLog.Measuring.Tests;

/// <content>Units by the names people write.</content>
public partial class UnitsTests
{
    // How garages write units: common practice, no source.
    [Theory]
    [InlineData("ohm", "Ω")]
    [InlineData("\u2126", "Ω")]
    [InlineData("kohm", "kΩ")]
    [InlineData("K\u03A9", "kΩ")]
    [InlineData("Mohm", "MΩ")]
    [InlineData("megohms", "MΩ")]
    [InlineData("milliohms", "mΩ")]
    [InlineData("mΩ", "mΩ")]
    [InlineData("MΩ", "MΩ")]
    [InlineData("volts", "V")]
    [InlineData("V DC", "V")]
    [InlineData("mv", "mV")]
    [InlineData("KV", "kV")]
    [InlineData("amps", "A")]
    [InlineData("mA", "mA")]
    [InlineData("mm.", "mm")]
    [InlineData("inches", "in")]
    [InlineData("\"", "in")]
    [InlineData("thou", "thou")]
    [InlineData("deg", "°")]
    [InlineData("RPM", "rpm")]
    [InlineData("r.p.m.", "rpm")]
    [InlineData("C", "°C")]
    [InlineData("℃", "°C")]
    [InlineData("degF", "°F")]
    [InlineData("p.s.i.", "psi")]
    [InlineData("lb/in²", "psi")]
    [InlineData("Bar", "bar")]
    [InlineData("KPA", "kPa")]
    [InlineData("Nm", "N·m")]
    [InlineData("ft-lb", "lbf·ft")]
    [InlineData("lb ft", "lbf·ft")]
    [InlineData("foot-pounds", "lbf·ft")]
    [InlineData("kms", "km")]
    [InlineData("miles", "mi")]
    [InlineData("uF", "µF")]
    [InlineData("\u03BCF", "µF")]
    [InlineData("MFD", "µF")]
    [InlineData("nf", "nF")]
    [InlineData("mH", "mH")]
    [InlineData("sec", "s")]
    [InlineData("Seconds", "s")]
    [InlineData("ms", "ms")]
    [InlineData("mins", "min")]
    [InlineData("per cent", "%")]
    [InlineData("pct.", "%")]
    [InlineData("SG", "g/cm³")]
    [InlineData("g/cm3", "g/cm³")]
    [InlineData("kg/m3", "kg/m³")]
    public void Unit_is_found_as_a_garage_writes_it(string text, string symbol) =>
        Assert.Equal(symbol, Assert.Single(Units.Named(text)).Symbol);

    [Fact]
    public void Unit_with_two_meanings_has_both()
    {
        Assert.Equal(["mm", "thou"], Units.Named("mil").Select(unit => unit.Symbol));
        Assert.Equal(["MΩ", "mΩ"], Units.Named("mohm").Select(unit => unit.Symbol));
        Assert.Empty(Units.Named("furlong"));
        Assert.Empty(Units.Named(""));
    }

    [Fact]
    public void Every_unit_is_named_by_its_own_symbol() =>
        Assert.All(Units.All, unit => Assert.Equal([unit], Units.Named(unit.Symbol)));
}
