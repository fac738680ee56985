namespace InspectLog.App.Listening;

/// <summary>When the speech model is loaded.</summary>
/// <param name="AtStart">At the start; otherwise with the first recording.</param>
public sealed record SpeechLoading(bool AtStart);
