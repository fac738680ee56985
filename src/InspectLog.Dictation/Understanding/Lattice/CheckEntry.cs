using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>A check as the reader needs it.</summary>
internal sealed class CheckEntry(Check check, int index, int places, string? nounStem)
{
    public Check Check { get; } = check;

    public int Index { get; } = index;

    /// <summary>Stem of what its places are called; null for a check done once.</summary>
    public string? NounStem { get; } = nounStem;

    public Measurand? Measurand => Check.Measurand;

    public bool PerPlace => Check.PerCylinder;

    /// <summary>How many places it has; 0 for a check done once.</summary>
    public int Places { get; } = places;

    /// <summary>Whether its places go by name.</summary>
    public bool HasNamedPlaces => Check.Places is { Names.Count: > 0 };

    public bool MainForActions => Check.Spoken.MainForActions;

    /// <summary>What sort of check it is, by how it is done and what can be done about it: the same for checks of other sheets
    /// that are alike.</summary>
    public int Shape { get; } = (check.PerCylinder ? 1 : 0) + (check.Measurand is null ? 0 : 2) + (check.Spoken.MainForActions ? 4 : 0)
        + (check.Actions.Contains(PartActions.Adjusted) ? 8 : 0) + (check.Actions.Count == 0 ? 16 : 0) + Math.Min(check.Conditions.Count, 3) * 32 + (check.Measurand?.Gauge == true ? 128 : 0);

    /// <summary>Whether a setting can lie on both sides of zero.</summary>
    public bool TwoSided => Check.Measurand is { Kind: QuantityKind.Angle, Plausible.From: < 0 };

    /// <summary>Index of the first condition that is as it should be; -1 where there is none.</summary>
    public int FirstGood { get; } = check.Conditions.ToList().FindIndex(condition => condition.Meaning == ConditionMeaning.Good);
}

/// <summary>A check or its part, named.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Subject">Whether the quantity or the check itself is named, and not only a part of it.</param>
internal readonly record struct Naming(int Check, bool Subject);

/// <summary>A condition of a check, said.</summary>
internal readonly record struct Meaning(int Check, int Condition);
