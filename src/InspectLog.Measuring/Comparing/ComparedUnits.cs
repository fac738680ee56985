namespace InspectLog.Measuring;

/// <summary>The units of compared figures.</summary>
public static class ComparedUnits
{
    /// <summary>The unit a figure is printed in: that of the reading for a difference, such as V; the two base units for a
    /// proportion, such as Ω/mm. It has no zero point of its own, and none of <see cref="Units"/> is equal to it.</summary>
    /// <param name="form">How the two readings are put together.</param>
    /// <param name="unit">The unit the reading is printed in.</param>
    /// <param name="other">The unit the other is printed in.</param>
    public static Unit Of(ComparisonForm form, Unit unit, Unit other)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(other);
        return form == ComparisonForm.Difference
            ? new Unit(unit.Symbol, unit.Kind, unit.InBaseUnit)
            : new Unit($"{Units.BaseOf(unit.Kind).Symbol}/{Units.BaseOf(other.Kind).Symbol}", unit.Kind, 1);
    }
}
