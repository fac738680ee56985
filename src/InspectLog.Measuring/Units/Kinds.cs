namespace InspectLog.Measuring;

/// <summary>What the program knows of each kind of quantity, in words for people.</summary>
public static class Kinds
{
    /// <summary>The kind as a noun: "resistance".</summary>
    public static string Noun(QuantityKind kind) => kind switch
    {
        QuantityKind.Resistance => "resistance",
        QuantityKind.Voltage => "voltage",
        QuantityKind.Length => "length",
        QuantityKind.Angle => "angle",
        QuantityKind.Current => "current",
        QuantityKind.Speed => "speed",
        QuantityKind.Temperature => "temperature",
        QuantityKind.Pressure => "pressure",
        QuantityKind.Torque => "torque",
        QuantityKind.Distance => "distance",
        QuantityKind.Capacitance => "capacitance",
        QuantityKind.Inductance => "inductance",
        QuantityKind.Time => "time",
        QuantityKind.Ratio => "ratio",
        QuantityKind.Density => "density",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Whether a value of this kind can lie below zero.</summary>
    public static bool MayBeNegative(QuantityKind kind) => kind
        is QuantityKind.Voltage or QuantityKind.Angle or QuantityKind.Current
        or QuantityKind.Temperature or QuantityKind.Pressure;

    /// <summary>Whether it is read off an electrical meter.</summary>
    public static bool IsElectrical(QuantityKind kind) => kind
        is QuantityKind.Resistance or QuantityKind.Voltage or QuantityKind.Current
        or QuantityKind.Capacitance or QuantityKind.Inductance;

    /// <summary>The units of the kind as a list: "Ω, kΩ, MΩ or mΩ".</summary>
    public static string UnitList(QuantityKind kind)
    {
        var symbols = Units.Of(kind).Select(unit => unit.Symbol).ToList();
        return symbols.Count == 1
            ? symbols[0]
            : $"{string.Join(", ", symbols[..^1])} or {symbols[^1]}";
    }
}
