using System.Globalization;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>What the papers of an instrument say, in words for people.</summary>
public static class InstrumentWords
{
    /// <summary>"Serial number 4711. Calibrated on 3 March 2026, due on 3 March 2027."; empty where nothing is noted.</summary>
    public static string Papers(Instrument instrument)
    {
        var serial = instrument.SerialNumber is { } number ? $"Serial number {number}." : "";
        var calibrated = (instrument.Calibrated, instrument.Due) switch
        {
            ({ } on, { } due) => $"Calibrated on {Day(on)}, due on {Day(due)}.",
            ({ } on, null) => $"Calibrated on {Day(on)}.",
            (null, { } due) => $"Calibration due on {Day(due)}.",
            _ => "",
        };
        var corrected = instrument.Corrections is null ? "" : "Corrected by its certificate.";
        return string.Join(" ", new[] { serial, calibrated, corrected }.Where(text => text.Length > 0));
    }

    /// <summary>That the calibration of an instrument had run out before a day; null where it had not.</summary>
    public static string? Overdue(Instrument instrument, DateOnly? day) => day is { } when && instrument.IsOverdue(when)
        ? $"Overdue: its calibration was good until {Day(instrument.Due!.Value)}."
        : null;

    /// <summary>The same of the instrument of a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="taken">When it was taken, in the workshop's time.</param>
    public static string? Overdue(ReadingDecided reading, DateTimeOffset taken) =>
        reading.Instrument is { } instrument && instrument.IsOverdue(DateOnly.FromDateTime(taken.Date))
            ? $"{instrument.Name} was overdue: its calibration was good until {Day(instrument.Due!.Value)}."
            : null;

    /// <summary>Which of its papers count in a reading: the range it chose, its correction, the temperature about it; empty
    /// for none.</summary>
    /// <param name="reading">The reading, as displayed.</param>
    /// <param name="unit">The unit to print in.</param>
    public static string InReading(DisplayedReading reading, Unit unit)
    {
        var correction = reading.Correction is { } added
            ? $", {(added > 0 ? "plus" : "less")} {Printed.Difference(Math.Abs(added), unit)} by the certificate"
            : "";
        var ambient = reading.Ambient is { } temperature ? $", in air of {Printed.Value(temperature, Units.Celsius)}" : "";
        return correction + ambient;
    }

    private static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
