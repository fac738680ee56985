using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace InspectLog.Measuring.Tests;

public partial class UnitsTests
{
    // UnitsNet is the outside authority for every factor.
    public static TheoryData<string, Enum, Enum> Factors => new()
    {
        { "Ω", ElectricResistanceUnit.Ohm, ElectricResistanceUnit.Ohm },
        { "mΩ", ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm },
        { "kΩ", ElectricResistanceUnit.Kiloohm, ElectricResistanceUnit.Ohm },
        { "MΩ", ElectricResistanceUnit.Megaohm, ElectricResistanceUnit.Ohm },
        { "V", ElectricPotentialUnit.Volt, ElectricPotentialUnit.Volt },
        { "mV", ElectricPotentialUnit.Millivolt, ElectricPotentialUnit.Volt },
        { "kV", ElectricPotentialUnit.Kilovolt, ElectricPotentialUnit.Volt },
        { "mm", LengthUnit.Millimeter, LengthUnit.Millimeter },
        { "in", LengthUnit.Inch, LengthUnit.Millimeter },
        { "thou", LengthUnit.Mil, LengthUnit.Millimeter },
        { "°", AngleUnit.Degree, AngleUnit.Degree },
        { "A", ElectricCurrentUnit.Ampere, ElectricCurrentUnit.Ampere },
        { "mA", ElectricCurrentUnit.Milliampere, ElectricCurrentUnit.Ampere },
        { "rpm", RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RevolutionPerMinute },
        { "°C", TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeCelsius },
        { "°F", TemperatureUnit.DegreeFahrenheit, TemperatureUnit.DegreeCelsius },
        { "kPa", PressureUnit.Kilopascal, PressureUnit.Kilopascal },
        { "bar", PressureUnit.Bar, PressureUnit.Kilopascal },
        { "psi", PressureUnit.PoundForcePerSquareInch, PressureUnit.Kilopascal },
        { "N·m", TorqueUnit.NewtonMeter, TorqueUnit.NewtonMeter },
        { "lbf·ft", TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter },
        { "km", LengthUnit.Kilometer, LengthUnit.Kilometer },
        { "mi", LengthUnit.Mile, LengthUnit.Kilometer },
        { "µF", CapacitanceUnit.Microfarad, CapacitanceUnit.Microfarad },
        { "nF", CapacitanceUnit.Nanofarad, CapacitanceUnit.Microfarad },
        { "mH", ElectricInductanceUnit.Millihenry, ElectricInductanceUnit.Millihenry },
        { "s", DurationUnit.Second, DurationUnit.Second },
        { "ms", DurationUnit.Millisecond, DurationUnit.Second },
        { "min", DurationUnit.Minute, DurationUnit.Second },
        { "%", RatioUnit.Percent, RatioUnit.Percent },
        { "g/cm³", DensityUnit.GramPerCubicCentimeter, DensityUnit.GramPerCubicCentimeter },
        { "kg/m³", DensityUnit.KilogramPerCubicMeter, DensityUnit.GramPerCubicCentimeter },
    };

    [Theory]
    [MemberData(nameof(Factors))]
    public void Factor_agrees_with_UnitsNet(string symbol, Enum unit, Enum baseUnit)
    {
        var ours = Units.Find(symbol);

        Assert.NotNull(ours);
        var zero = UnitConverter.Convert(0, unit, baseUnit);
        Close.ToDigits(UnitConverter.Convert(1, unit, baseUnit) - zero, ours.InBaseUnit, 12);
        Close.ToDigits(UnitConverter.Convert(123.4, unit, baseUnit), ours.ToBase(123.4), 12);
        Close.ToDigits(UnitConverter.Convert(123.4, baseUnit, unit), ours.FromBase(123.4), 12);
        Close.ToDigits(UnitConverter.Convert(123.4, unit, baseUnit) - zero, ours.DifferenceToBase(123.4), 12);
    }

    [Fact]
    public void Every_unit_is_checked_against_UnitsNet() =>
        Assert.Equal(
            Units.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal),
            Factors.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    // 1 in = 25.4 mm exactly (international agreement of 1959, NIST SP 811). Left: thou computed to four decimals.
    [Theory]
    [InlineData(0.20, 7.8740)]
    [InlineData(0.25, 9.8425)]
    [InlineData(0.30, 11.8110)]
    [InlineData(0.35, 13.7795)]
    [InlineData(0.40, 15.7480)]
    [InlineData(0.60, 23.6220)]
    [InlineData(0.80, 31.4961)]
    [InlineData(1.00, 39.3701)]
    [InlineData(1.10, 43.3071)]
    public void Millimetres_become_thou(double mm, double thou) => Close.ToDecimals(thou, Units.Thou.FromBase(mm), 4);

    [Theory]
    [InlineData(6, 0.1524)]
    [InlineData(8, 0.2032)]
    [InlineData(12, 0.3048)]
    [InlineData(15, 0.3810)]
    [InlineData(16, 0.4064)]
    [InlineData(25, 0.6350)]
    [InlineData(28, 0.7112)]
    [InlineData(30, 0.7620)]
    [InlineData(35, 0.8890)]
    public void Thou_become_millimetres_to_the_last_digit(double thou, double mm) =>
        Assert.Equal(mm, Units.Thou.ToBase(thou));

    [Fact]
    public void Conversion_there_and_back_changes_nothing() =>
        Gen.Select(Gen.OneOf([.. Units.All]), Gen.Double[-1e9, 1e9]).Sample((unit, value) =>
            Math.Abs(unit.FromBase(unit.ToBase(value)) - value) <= 4e-15 * (Math.Abs(value) + 32)
            && Math.Abs(unit.DifferenceFromBase(unit.DifferenceToBase(value)) - value) <= 4e-15 * Math.Abs(value));

    // NIST SP 811: 150 psi.
    [Fact]
    public void Compression_in_psi_becomes_kilopascal_and_bar()
    {
        Close.ToDecimals(1034.2136, Units.Psi.ToBase(150), 4);
        Close.ToDecimals(10.342136, Units.Bar.FromBase(Units.Psi.ToBase(150)), 6);
    }

    // The defining points of the two scales.
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    public void Fahrenheit_becomes_Celsius(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, Units.Fahrenheit.ToBase(fahrenheit));

    [Fact]
    public void Base_unit_of_each_kind_has_factor_one() =>
        Assert.All(Enum.GetValues<QuantityKind>(), kind =>
        {
            Assert.Equal(1, Units.BaseOf(kind).InBaseUnit);
            Assert.Equal(kind, Units.BaseOf(kind).Kind);
            Assert.NotEmpty(Kinds.Noun(kind));
        });

    [Fact]
    public void Unknown_symbol_is_not_found() => Assert.Null(Units.Find("furlong"));

    [Fact]
    public void Unknown_kind_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Units.BaseOf((QuantityKind)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kinds.Noun((QuantityKind)99));
    }

    [Fact]
    public void Units_of_a_kind_are_listed_for_people()
    {
        Assert.Equal("Ω, kΩ, MΩ or mΩ", Kinds.UnitList(QuantityKind.Resistance));
        Assert.Equal("°", Kinds.UnitList(QuantityKind.Angle));
    }
}
