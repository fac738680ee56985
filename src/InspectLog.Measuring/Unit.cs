namespace InspectLog.Measuring;

/// <summary>A unit of measurement of one <see cref="QuantityKind"/>, with its factor to the base unit.</summary>
/// <remarks>Instances come from <see cref="Units"/>; two units are equal when they are the same instance.</remarks>
public sealed class Unit
{
    internal Unit(string symbol, QuantityKind kind, double inBaseUnit)
    {
        Symbol = symbol;
        Kind = kind;
        InBaseUnit = inBaseUnit;
    }

    /// <summary>The symbol as printed beside a number: Ω, kΩ, V, mm, in, thou, °.</summary>
    public string Symbol { get; }

    /// <summary>What the unit measures.</summary>
    public QuantityKind Kind { get; }

    /// <summary>How many base units one of this unit is: 1000 for kΩ.</summary>
    public double InBaseUnit { get; }

    /// <summary>Converts a value in this unit to the base unit of its kind.</summary>
    public double ToBase(double value) => value * InBaseUnit;

    /// <summary>Converts a value in the base unit of the kind to this unit.</summary>
    public double FromBase(double baseValue) => baseValue / InBaseUnit;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
