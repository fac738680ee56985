using System.Globalization;
using System.Text;
using InspectLog.App.Ui;
using InspectLog.Archives.Making;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Archiving;

/// <summary>Every reading of a vehicle as a table, RFC 4180, numbers in base units. Pure.</summary>
public static class ReadingsTable
{
    private static readonly string[] Columns =
    [
        "inspection", "inspected on", "sheet", "check", "check id", "place", "entry", "recorded", "by", "as given", "reading",
        "as displayed", "goes", "stops", "unit", "decided value", "expanded uncertainty", "coverage factor", "decided unit",
        "lower limit", "upper limit", "limits from", "decision", "probability of conformity", "instrument", "standing",
    ];

    /// <summary>The table.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets its inspections were made with.</param>
    public static byte[] Of(VehicleState vehicle, SheetLibrary sheets)
    {
        var text = new StringBuilder(CsvText.Line(Columns));
        foreach (var inspection in vehicle.Inspections)
        {
            foreach (var reading in inspection.Everything.OfType<Recorded<ReadingDecided>>())
            {
                text.Append(CsvText.Line(Line(inspection, reading, sheets.Of(inspection))));
            }
        }

        // With a byte order mark, without which the spreadsheets most people have read Ω as other signs.
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static IEnumerable<object?> Line(InspectionState inspection, Recorded<ReadingDecided> recorded, CheckSheet? sheet)
    {
        var reading = recorded.Body;
        var check = sheet?.Find(reading.Check);
        var (displayed, bracket) = (reading.Reading as DisplayedReading, reading.Reading as Bracket);
        var unit = check?.Measurand is { } measurand ? Units.BaseOf(measurand.Kind).Symbol : null;
        var conformity = reading.Conformity;
        return
        [
            inspection.Number, Times.Machine(Times.DayOf(inspection.Started)), sheet?.Title ?? inspection.How.Sheet,
            check?.Title ?? reading.Check, reading.Check, reading.Cylinder is null ? null : PlaceOf(check, reading.Cylinder.Value),
            recorded.Sequence, Times.Machine(recorded.Time), recorded.History.By, reading.AsGiven,
            check is null ? null : RecordWords.Value(reading, check),
            displayed is null ? null : Displayed(displayed.Values), bracket?.Goes, bracket?.Stops, unit,
            conformity?.Value, conformity?.ExpandedUncertainty, conformity?.CoverageFactor, DecidedUnit(reading, check, unit),
            reading.Limits?.Lower, reading.Limits?.Upper, reading.Limits?.Source,
            conformity?.Decision.Words(), conformity?.ProbabilityOfConformity, reading.Instrument?.Name, Standing(recorded.History),
        ];
    }

    private static string PlaceOf(Check? check, int place) =>
        check?.Places?.NameOf(place) ?? place.ToString(CultureInfo.InvariantCulture);

    /// <summary>One value is a number, so that a spreadsheet can work with it; several are a text.</summary>
    private static object Displayed(IReadOnlyList<double> values) => values is [var one]
        ? one
        : string.Join(' ', values.Select(value => value.ToString("R", CultureInfo.InvariantCulture)));

    private static string? DecidedUnit(ReadingDecided reading, Check? check, string? unit) =>
        reading is { With.Form: ComparisonForm.Proportion } && check is { Measurand.DecidedBy: not null }
            ? ComparedWords.FigureUnit(reading, check).Symbol
            : unit;

    private static string Standing(History history) => history switch
    {
        { Withdrawn: not null } => "withdrawn",
        { IsLater: true } => "added later",
        _ => "counts",
    };
}
