using System.Collections.Frozen;

namespace InspectLog.Measuring;

/// <summary>The units the program knows.</summary>
public static class Units
{
    /// <summary>Ohm.</summary>
    public static readonly Unit Ohm = new("Ω", QuantityKind.Resistance, 1);

    /// <summary>Kilohm.</summary>
    public static readonly Unit Kilohm = new("kΩ", QuantityKind.Resistance, 1000);

    /// <summary>Megohm.</summary>
    public static readonly Unit Megohm = new("MΩ", QuantityKind.Resistance, 1_000_000);

    /// <summary>Volt.</summary>
    public static readonly Unit Volt = new("V", QuantityKind.Voltage, 1);

    /// <summary>Millivolt.</summary>
    public static readonly Unit Millivolt = new("mV", QuantityKind.Voltage, 0.001);

    /// <summary>Millimetre.</summary>
    public static readonly Unit Millimetre = new("mm", QuantityKind.Length, 1);

    /// <summary>Inch.</summary>
    public static readonly Unit Inch = new("in", QuantityKind.Length, 25.4);

    /// <summary>Thousandth of an inch.</summary>
    public static readonly Unit Thou = new("thou", QuantityKind.Length, 0.0254);

    /// <summary>Degree of crankshaft angle.</summary>
    public static readonly Unit Degree = new("°", QuantityKind.Angle, 1);

    private static readonly FrozenDictionary<string, Unit> BySymbol =
        new[] { Ohm, Kilohm, Megohm, Volt, Millivolt, Millimetre, Inch, Thou, Degree }
            .ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    /// <summary>Every unit.</summary>
    public static IReadOnlyCollection<Unit> All => BySymbol.Values;

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
