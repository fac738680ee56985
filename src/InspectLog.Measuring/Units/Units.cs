using System.Collections.Frozen;

namespace InspectLog.Measuring;

/// <summary>The units the program knows.</summary>
/// <remarks>Factors are those of the SI Brochure and, for inch, mile, pound-force and what follows from them, the
/// exact definitions of NIST Special Publication 811. The tests hold each against UnitsNet.</remarks>
public static class Units
{
    /// <summary>Ohm.</summary>
    public static readonly Unit Ohm = new("Ω", QuantityKind.Resistance, 1);

    /// <summary>Milliohm.</summary>
    public static readonly Unit Milliohm = new("mΩ", QuantityKind.Resistance, 1, 1000);

    /// <summary>Kilohm.</summary>
    public static readonly Unit Kilohm = new("kΩ", QuantityKind.Resistance, 1000);

    /// <summary>Megohm.</summary>
    public static readonly Unit Megohm = new("MΩ", QuantityKind.Resistance, 1_000_000);

    /// <summary>Volt.</summary>
    public static readonly Unit Volt = new("V", QuantityKind.Voltage, 1);

    /// <summary>Millivolt.</summary>
    public static readonly Unit Millivolt = new("mV", QuantityKind.Voltage, 1, 1000);

    /// <summary>Kilovolt.</summary>
    public static readonly Unit Kilovolt = new("kV", QuantityKind.Voltage, 1000);

    /// <summary>Millimetre.</summary>
    public static readonly Unit Millimetre = new("mm", QuantityKind.Length, 1);

    /// <summary>Inch, 25.4 mm exactly.</summary>
    public static readonly Unit Inch = new("in", QuantityKind.Length, 254, 10);

    /// <summary>Thousandth of an inch.</summary>
    public static readonly Unit Thou = new("thou", QuantityKind.Length, 254, 10_000);

    /// <summary>Degree of crankshaft angle.</summary>
    public static readonly Unit Degree = new("°", QuantityKind.Angle, 1);

    /// <summary>Ampere.</summary>
    public static readonly Unit Ampere = new("A", QuantityKind.Current, 1);

    /// <summary>Milliampere.</summary>
    public static readonly Unit Milliampere = new("mA", QuantityKind.Current, 1, 1000);

    /// <summary>Revolution per minute.</summary>
    public static readonly Unit Rpm = new("rpm", QuantityKind.Speed, 1);

    /// <summary>Degree Celsius.</summary>
    public static readonly Unit Celsius = new("°C", QuantityKind.Temperature, 1);

    /// <summary>Degree Fahrenheit; 32 °F is 0 °C.</summary>
    public static readonly Unit Fahrenheit = new("°F", QuantityKind.Temperature, 5, 9, zero: 32);

    /// <summary>Kilopascal.</summary>
    public static readonly Unit Kilopascal = new("kPa", QuantityKind.Pressure, 1);

    /// <summary>Bar.</summary>
    public static readonly Unit Bar = new("bar", QuantityKind.Pressure, 100);

    /// <summary>Pound-force per square inch, 4.4482216152605 N on (25.4 mm)².</summary>
    public static readonly Unit Psi = new("psi", QuantityKind.Pressure, 44_482_216_152_605, 6_451_600_000_000);

    /// <summary>Newton metre.</summary>
    public static readonly Unit NewtonMetre = new("N·m", QuantityKind.Torque, 1);

    /// <summary>Pound-force foot, 4.4482216152605 N at 0.3048 m.</summary>
    public static readonly Unit PoundForceFoot =
        new("lbf·ft", QuantityKind.Torque, 3_389_544_870_828_501, 2_500_000_000_000_000);

    /// <summary>Kilometre.</summary>
    public static readonly Unit Kilometre = new("km", QuantityKind.Distance, 1);

    /// <summary>Mile, 1.609344 km exactly.</summary>
    public static readonly Unit Mile = new("mi", QuantityKind.Distance, 1_609_344, 1_000_000);

    /// <summary>Microfarad.</summary>
    public static readonly Unit Microfarad = new("µF", QuantityKind.Capacitance, 1);

    /// <summary>Nanofarad.</summary>
    public static readonly Unit Nanofarad = new("nF", QuantityKind.Capacitance, 1, 1000);

    /// <summary>Millihenry.</summary>
    public static readonly Unit Millihenry = new("mH", QuantityKind.Inductance, 1);

    /// <summary>Second.</summary>
    public static readonly Unit Second = new("s", QuantityKind.Time, 1);

    /// <summary>Millisecond.</summary>
    public static readonly Unit Millisecond = new("ms", QuantityKind.Time, 1, 1000);

    /// <summary>Minute.</summary>
    public static readonly Unit Minute = new("min", QuantityKind.Time, 60);

    /// <summary>Percent.</summary>
    public static readonly Unit Percent = new("%", QuantityKind.Ratio, 1);

    /// <summary>Gram per cubic centimetre.</summary>
    public static readonly Unit GramPerCubicCentimetre = new("g/cm³", QuantityKind.Density, 1);

    /// <summary>Kilogram per cubic metre: what is called "twelve sixty" is 1260 kg/m³.</summary>
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", QuantityKind.Density, 1, 1000);

    private static readonly Unit[] InOrder =
    [
        Ohm, Kilohm, Megohm, Milliohm, Volt, Millivolt, Kilovolt, Millimetre, Thou, Inch, Degree, Ampere, Milliampere,
        Rpm, Celsius, Fahrenheit, Kilopascal, Bar, Psi, NewtonMetre, PoundForceFoot, Kilometre, Mile, Microfarad,
        Nanofarad, Millihenry, Second, Minute, Millisecond, Percent, GramPerCubicCentimetre, KilogramPerCubicMetre,
    ];

    private static readonly FrozenDictionary<string, Unit> BySymbol =
        InOrder.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    /// <summary>Every unit, kind by kind, the commonest of a kind first.</summary>
    public static IReadOnlyCollection<Unit> All => InOrder;

    /// <summary>The units of one kind, the commonest first.</summary>
    public static IEnumerable<Unit> Of(QuantityKind kind) => InOrder.Where(unit => unit.Kind == kind);

    /// <summary>The base unit of a kind of quantity.</summary>
    public static Unit BaseOf(QuantityKind kind) => kind switch
    {
        QuantityKind.Resistance => Ohm,
        QuantityKind.Voltage => Volt,
        QuantityKind.Length => Millimetre,
        QuantityKind.Angle => Degree,
        QuantityKind.Current => Ampere,
        QuantityKind.Speed => Rpm,
        QuantityKind.Temperature => Celsius,
        QuantityKind.Pressure => Kilopascal,
        QuantityKind.Torque => NewtonMetre,
        QuantityKind.Distance => Kilometre,
        QuantityKind.Capacitance => Microfarad,
        QuantityKind.Inductance => Millihenry,
        QuantityKind.Time => Second,
        QuantityKind.Ratio => Percent,
        QuantityKind.Density => GramPerCubicCentimetre,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>The units a text can mean, written as a garage writes them: "kohm", "ft-lb", "mfd", "°F". Several where it
    /// has more than one meaning, as "mil" has; none where it is no unit.</summary>
    public static IReadOnlyList<Unit> Named(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return UnitWords.Find(text);
    }

    /// <summary>Finds a unit by the symbol it prints; null when there is none.</summary>
    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);
}
