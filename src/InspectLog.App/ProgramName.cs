using System.Globalization;

namespace InspectLog.App;

/// <summary>What the program calls itself in what it makes for others.</summary>
public static class ProgramName
{
    /// <summary>Its name and version.</summary>
    public static string WithVersion { get; } =
        string.Create(CultureInfo.InvariantCulture, $"InspectLog {typeof(ProgramName).Assembly.GetName().Version?.ToString(3)}");
}
