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
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Whether a value of this kind can lie below zero.</summary>
    public static bool MayBeNegative(QuantityKind kind) =>
        kind is not (QuantityKind.Resistance or QuantityKind.Length);

    /// <summary>The units of the kind as a list: "Ω, kΩ, MΩ or mΩ".</summary>
    public static string UnitList(QuantityKind kind)
    {
        var symbols = Units.Of(kind).Select(unit => unit.Symbol).ToList();
        return symbols.Count == 1
            ? symbols[0]
            : $"{string.Join(", ", symbols[..^1])} or {symbols[^1]}";
    }
}
