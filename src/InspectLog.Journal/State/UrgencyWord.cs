namespace InspectLog.Journal.State;

/// <summary>How soon somebody wants something seen to.</summary>
/// <param name="Urgency">now, soon or later.</param>
/// <param name="By">Who said so.</param>
/// <param name="Time">When.</param>
public sealed record UrgencyWord(string Urgency, string By, DateTimeOffset Time);
