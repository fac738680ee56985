using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Reads what the papers of an instrument say beside its accuracy: serial, calibrated, due, statedFor and perDegree
/// (temperature), corrections (one a line: reading; correction) and certificate (its expanded uncertainty). All may be left
/// open.</summary>
public static class PaperFields
{
    /// <summary>The instrument with them; what is wrong is noted on the form.</summary>
    public static Instrument Read(PostedForm form, Unit unit, Instrument instrument)
    {
        var (calibrated, due) = (Day(form, "calibrated"), Day(form, "due"));
        if (due < calibrated)
        {
            form.Refuse("due", "It cannot be due before the day it was calibrated.");
        }

        var certificate = Numbers.AboveZero(form, "certificate", form.Text("certificate"), "0.05");
        return instrument with
        {
            SerialNumber = form.Text("serial") is { Length: > 0 } serial ? serial : null,
            Calibrated = calibrated,
            Due = due,
            Corrections = Corrections(form, unit),
            CertificateUncertainty = certificate > 0 ? unit.DifferenceToBase(certificate) : null,
            Temperature = Temperature(form, unit),
        };
    }

    private static DateOnly? Day(PostedForm form, string field)
    {
        var text = form.Text(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        form.Refuse(field, "Type the day as year-month-day, such as 2026-11-25.");
        return null;
    }

    private static List<CalibrationPoint>? Corrections(PostedForm form, Unit unit)
    {
        var points = new List<CalibrationPoint>();
        foreach (var line in Numbers.Lines(form, "corrections"))
        {
            if (line is [var reading, var correction] && Numbers.Read(reading) is { } at && Numbers.Read(correction) is { } added)
            {
                points.Add(new(unit.ToBase(at), unit.DifferenceToBase(added)));
            }
            else
            {
                form.Refuse("corrections", $"\"{string.Join("; ", line)}\" is no correction. Write one a line: what it reads; what is added, such as 10; -0.02.");
            }
        }

        if (points.DistinctBy(point => point.Reading).Count() < points.Count)
        {
            form.Refuse("corrections", "Two corrections are for the same reading. Write each reading once.");
        }

        return points.Count > 0 ? [.. points.OrderBy(point => point.Reading)] : null;
    }

    private static TemperatureTerm? Temperature(PostedForm form, Unit unit)
    {
        var (perDegree, statedFor) = (form.Text("perDegree"), form.Text("statedFor"));
        if (perDegree.Length == 0)
        {
            return null;
        }

        if (!TemperatureTerm.TryParse(perDegree, statedFor, unit.Kind, out var term, out var problem))
        {
            form.Refuse(problem.Contains("temperatures", StringComparison.Ordinal) ? "statedFor" : "perDegree", problem);
        }

        return term;
    }
}
