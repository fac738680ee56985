using System.Globalization;

namespace InspectLog.App.Ui;

/// <summary>Dates and times as people write them. They are given in the workshop's time.</summary>
public static class Times
{
    /// <summary>"21 November 2026".</summary>
    public static string Date(DateTimeOffset time) => time.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"21 November 2026".</summary>
    public static string Date(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The day a time falls on where it was noted.</summary>
    public static DateOnly DayOf(DateTimeOffset time) => DateOnly.FromDateTime(time.Date);

    /// <summary>For a date field: "2026-11-25".</summary>
    public static string Machine(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>"12:41".</summary>
    public static string Clock(DateTimeOffset time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"12:41:07".</summary>
    public static string ClockSeconds(DateTimeOffset time) => time.ToString("HH:mm:ss", CultureInfo.InvariantCulture);

    /// <summary>"21 November 2026, 12:41".</summary>
    public static string DateAndClock(DateTimeOffset time) => $"{Date(time)}, {Clock(time)}";

    /// <summary>For the datetime attribute: "2026-11-25T12:41:07+01:00".</summary>
    public static string Machine(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>The same to the millisecond, for scripts: "2026-11-25T12:41:07.250+01:00".</summary>
    public static string Exact(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture);

    /// <summary>An odometer reading: "88 412 km", in groups of three parted by no-break spaces.</summary>
    public static string Odometer(double reading, string? unit) =>
        $"{reading.ToString("#,0", Grouped)}\u00a0{unit ?? ""}".TrimEnd('\u00a0');

    private static readonly NumberFormatInfo Grouped = new() { NumberGroupSeparator = "\u00a0" };
}
