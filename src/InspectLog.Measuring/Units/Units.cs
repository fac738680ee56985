using System.Collections.Frozen;

namespace InspectLog.Measuring;

/// <summary>The units the program knows.</summary>
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

    /// <summary>Inch, 25.4 mm exactly (international yard and pound agreement of 1959).</summary>
    public static readonly Unit Inch = new("in", QuantityKind.Length, 254, 10);

    /// <summary>Thousandth of an inch.</summary>
    public static readonly Unit Thou = new("thou", QuantityKind.Length, 254, 10_000);

    /// <summary>Degree of crankshaft angle.</summary>
    public static readonly Unit Degree = new("°", QuantityKind.Angle, 1);

    private static readonly Unit[] InOrder =
        [Ohm, Kilohm, Megohm, Milliohm, Volt, Millivolt, Kilovolt, Millimetre, Thou, Inch, Degree];

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
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Finds a unit by the symbol it prints; null when there is none.</summary>
    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);
}
