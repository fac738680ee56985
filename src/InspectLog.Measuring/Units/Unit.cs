namespace InspectLog.Measuring;

/// <summary>A unit of measurement of one <see cref="QuantityKind"/>, with its factor to the base unit.</summary>
/// <remarks>Instances come from <see cref="Units"/>; two units are equal when they are the same instance.</remarks>
public sealed class Unit
{
    // The factor is kept as a fraction of two whole numbers, so that 12 thou is 0.3048 mm to the last digit.
    private readonly double _numerator;
    private readonly double _denominator;
    private readonly double _zero;

    internal Unit(string symbol, QuantityKind kind, double numerator, double denominator = 1, double zero = 0)
    {
        Symbol = symbol;
        Kind = kind;
        _numerator = numerator;
        _denominator = denominator;
        _zero = zero;
    }

    /// <summary>The symbol as printed beside a number: Ω, kΩ, V, mm, in, thou, °.</summary>
    public string Symbol { get; }

    /// <summary>What the unit measures.</summary>
    public QuantityKind Kind { get; }

    /// <summary>How many base units one of this unit is: 1000 for kΩ. For a temperature, the size of a degree.</summary>
    public double InBaseUnit => _numerator / _denominator;

    /// <summary>Whether a number in this unit differs from one in another by a power of ten only.</summary>
    internal bool IsDecimalOf(Unit other)
    {
        var power = Math.Log10(InBaseUnit / other.InBaseUnit);
        return Kind == other.Kind && _zero == other._zero && Math.Abs(power - Math.Round(power)) < 1e-9;
    }

    /// <summary>Converts a value in this unit to the base unit of its kind.</summary>
    public double ToBase(double value) => DifferenceToBase(value - _zero);

    /// <summary>Converts a value in the base unit of the kind to this unit.</summary>
    public double FromBase(double baseValue) => DifferenceFromBase(baseValue) + _zero;

    /// <summary>Converts a difference or an uncertainty in this unit to the base unit. It differs from
    /// <see cref="ToBase"/> for temperatures, whose scales start at different points.</summary>
    public double DifferenceToBase(double difference) => difference * _numerator / _denominator;

    /// <summary>Converts a difference or an uncertainty in the base unit to this unit.</summary>
    public double DifferenceFromBase(double baseDifference) => baseDifference * _denominator / _numerator;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
