namespace InspectLog.App.Bench;

/// <summary>The inspection was closed before the record reached it.</summary>
public sealed class InspectionClosedException()
    : Exception("The inspection is closed, so nothing more is recorded in it. Start another inspection for what is new.");
