namespace InspectLog.Journal.State;

/// <summary>Which check limits are for.</summary>
/// <param name="Sheet">Id of its sheet; null for limits set before they named it, for any sheet that has the check.</param>
/// <param name="Check">Id of the check.</param>
public readonly record struct LimitsKey(string? Sheet, string Check);
