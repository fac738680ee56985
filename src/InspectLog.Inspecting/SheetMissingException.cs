namespace InspectLog.Inspecting;

/// <summary>Something was to be recorded in an inspection whose check sheet is missing.</summary>
/// <param name="missing">Which sheet, and what to do.</param>
public sealed class SheetMissingException(string missing) : Exception($"{missing} Nothing was recorded.");
