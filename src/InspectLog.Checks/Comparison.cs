using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>How readings of a check are decided in an inspection where another check was read as well: not by themselves,
/// but by what they make together with that reading.</summary>
/// <param name="Form">How the two are put together.</param>
/// <param name="CheckId">Id of the other check: done once, or for the same places.</param>
/// <param name="Limits">The limits of what they make together: in the base unit of the kind, of a proportion in that for each
/// base unit of the other's kind.</param>
/// <param name="LimitSource">Where those limits come from.</param>
public sealed record Comparison(ComparisonForm Form, string CheckId, Limits Limits, string LimitSource)
{
    /// <summary>Short name of the other check.</summary>
    public required string Name { get; init; }

    /// <summary>The unit the other check is printed in.</summary>
    public required Unit OtherUnit { get; init; }

    /// <summary>Whether the other check is done for each place, and is read at the same one.</summary>
    public required bool AtSamePlace { get; init; }

    /// <summary>Whether limits of the vehicle's own stand in the way: then readings are decided by themselves.</summary>
    public bool IsOverruled { get; init; }

    /// <summary>The unit of what the two make together.</summary>
    /// <param name="unit">The unit the check itself is printed in.</param>
    public Unit UnitFor(Unit unit) => ComparedUnits.Of(Form, unit, OtherUnit);

    /// <summary>The limits in the terms of the reading itself, for one value of the other check: "at most 0.5 V below 12.8 V"
    /// is at least 12.3 V.</summary>
    /// <param name="form">How the two are put together.</param>
    /// <param name="limits">The limits of what they make together.</param>
    /// <param name="other">Value of the other check, base unit; above 0 for a proportion.</param>
    public static Limits For(ComparisonForm form, Limits limits, double other) => form == ComparisonForm.Difference
        ? Limits.Of(other - limits.Upper, other - limits.Lower)
        : Limits.Of(limits.Lower * other, limits.Upper * other);
}
