namespace InspectLog.Dictation.Understanding.Events;

/// <summary>What a finding says, but for its place.</summary>
/// <param name="Kind">What sort of finding.</param>
/// <param name="Check">Index of the check.</param>
/// <param name="Value">For a reading: the value, base unit; null with a bracket.</param>
/// <param name="Bracket">For a reading taken with gauges.</param>
/// <param name="Condition">For an observation: index of the condition; else -1.</param>
/// <param name="Negated">For an observation: whether it was said to be absent.</param>
/// <param name="Action">For an action: what was done.</param>
internal sealed record Claim(FindingKind Kind, int Check, double? Value, GaugeBracket? Bracket, int Condition, bool Negated, string? Action)
{
    public static Claim Reading(int check, double value) => new(FindingKind.Reading, check, Rounded(value), null, -1, false, null);

    public static Claim Gauges(int check, double a, double b) =>
        new(FindingKind.Reading, check, null, new(Rounded(Math.Min(a, b)), Rounded(Math.Max(a, b))), -1, false, null);

    public static Claim Observation(int check, int condition, bool negated) => new(FindingKind.Observation, check, null, null, condition, negated, null);

    public static Claim Done(int check, string action) => new(FindingKind.Action, check, null, null, -1, false, action);

    /// <summary>To the digits that can be told apart, so that two ways to the same value are one.</summary>
    private static double Rounded(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        var scale = Math.Pow(10, 10 - Math.Ceiling(Math.Log10(Math.Abs(value))));
        return Math.Round(value * scale) / scale;
    }
}

/// <summary>What can be made of an event.</summary>
internal enum OptionKind
{
    /// <summary>Nothing.</summary>
    Drop,

    /// <summary>A finding.</summary>
    Keep,

    /// <summary>A bracket of this number and the next.</summary>
    Bracket,

    /// <summary>What was found last, of another place.</summary>
    Copy,

    /// <summary>What was found last, of another part.</summary>
    Again,
}

/// <summary>One thing that can be made of an event.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Claim">What it says; null for nothing, and for what depends on what was found before.</param>
/// <param name="Shared">Features it has in common with others of the same check.</param>
/// <param name="Own">Its own features.</param>
internal sealed record EventOption(OptionKind Kind, Claim? Claim, uint[] Shared, uint[] Own);
