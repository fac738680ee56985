using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>A reading of one place in one inspection, as a point of a trend.</summary>
/// <param name="Inspection">The inspection; its last reading of the place counts.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Value">Its best estimate, base unit.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty (95.45 %, whatever it was decided with), base unit.</param>
/// <param name="IsOfAnEarlierPart">Whether the part was replaced or adjusted after it, so that it says nothing of what
/// is there now.</param>
public sealed record TrendReading(
    InspectionState Inspection,
    Recorded<ReadingDecided> Reading,
    double Value,
    double ExpandedUncertainty,
    bool IsOfAnEarlierPart);

/// <summary>What was read at one place over the inspections of a vehicle.</summary>
/// <param name="Sheet">The sheet it is read with: that of the last inspection, for its number of cylinders.</param>
/// <param name="Check">The check, with the limits in force on this vehicle now.</param>
/// <param name="Measurand">What it measures.</param>
/// <param name="Cylinder">The place; null for a check done once.</param>
/// <param name="Readings">One a inspection, oldest first; two or more, and at most <see cref="Most"/>.</param>
/// <param name="Renewal">What made it another one the last time, an action of the sheet: "replaced", "adjusted"; null where
/// nothing did.</param>
public sealed record TrendSeries(
    CheckSheet Sheet, Check Check, Measurand Measurand, int? Cylinder, IReadOnlyList<TrendReading> Readings, string? Renewal)
{
    /// <summary>Inspections a series needs to be worth a look.</summary>
    private const int Fewest = 2;

    /// <summary>Readings of a series at most: the last ones, where there are more.</summary>
    public const int Most = 200;

    /// <summary>Readings of what is there now.</summary>
    public IReadOnlyList<TrendReading> Current { get; } = [.. Readings.Where(reading => !reading.IsOfAnEarlierPart)];

    /// <summary>Every place of a vehicle that was read in two inspections or more, in the order of its sheet.</summary>
    public static IReadOnlyList<TrendSeries> Of(VehicleState vehicle, SheetLibrary sheets) =>
    [
        .. from sheet in SheetsOf(vehicle, sheets)
           let inspections = vehicle.Inspections.Where(inspection => sheet.IsOneWith(inspection.How.Sheet)).ToList()
           let renewals = inspections.SelectMany(inspection => inspection.ActionsOf(PartActions.Replaced, PartActions.Adjusted)).ToList()
           from check in sheet.Checks
           let measurand = check.Measurand
           where measurand is not null
           from cylinder in Places.Of(sheet, check)
           let renewal = LastRenewal(renewals, sheet, check, cylinder)
           let readings = ReadingsOf(inspections, check, cylinder, renewal?.Sequence ?? 0)
           where readings.Count >= Fewest
           select new TrendSeries(sheet, check, measurand, cylinder, readings, renewal?.Body.Action),
    ];

    /// <summary>One place of a vehicle; null where it was not read twice.</summary>
    public static TrendSeries? Find(VehicleState vehicle, SheetLibrary sheets, string check, int? cylinder) =>
        Of(vehicle, sheets).FirstOrDefault(series => series.Check.Id == check && series.Cylinder == cylinder);

    /// <summary>One sheet for all that go on from each other: the last the vehicle was inspected with.</summary>
    private static IEnumerable<CheckSheet> SheetsOf(VehicleState vehicle, SheetLibrary sheets) =>
        vehicle.Inspections
            .GroupBy(inspection => BuiltInSheets.FamilyOf(inspection.How.Sheet))
            .Select(family => family.Select(sheets.Of).OfType<CheckSheet>().LastOrDefault())
            .OfType<CheckSheet>()
            .Select(sheet => LimitsFor.Vehicle(vehicle, sheet));

    private static List<TrendReading> ReadingsOf(List<InspectionState> inspections, Check check, int? cylinder, long renewed) =>
    [
        .. inspections.AsEnumerable().Reverse()
            .Select(inspection => (Inspection: inspection, Reading: inspection.LastReading(check.Id, cylinder)))
            .Where(one => one.Reading is not null)
            .Take(Most)
            .Reverse()
            .Select(one => PointOf(one.Inspection, one.Reading!, renewed)),
    ];

    private static TrendReading PointOf(InspectionState inspection, Recorded<ReadingDecided> reading, long renewed)
    {
        var body = reading.Body;
        // All of a trend cover the same, so that its readings can be held against each other and against its band.
        var expanded = body.Conformity?.Evaluation is { IsUsualCoverage: false } other
            && RecordWords.EstimateOf(body.Reading, other with { Coverage = Coverage.Probability }) is { } usual
                ? usual.ExpandedUncertainty
                : RecordWords.Spread(body);
        return new(inspection, reading, RecordWords.BestEstimate(body), expanded, reading.Sequence < renewed);
    }

    /// <summary>The last entry by which the part at the place became another one: it was replaced, or this very check was
    /// adjusted. Null where that never happened.</summary>
    private static Recorded<ActionDone>? LastRenewal(List<Recorded<ActionDone>> renewals, CheckSheet sheet, Check check, int? cylinder) =>
        renewals
            .Where(done => done.Body.Cylinder is null || done.Body.Cylinder == cylinder)
            .Where(done => done.Body.Action switch
            {
                PartActions.Replaced => IsSamePart(check, sheet.Find(done.Body.Check)),
                PartActions.Adjusted => done.Body.Check == check.Id,
                _ => false,
            })
            .MaxBy(done => done.Sequence);

    /// <summary>Checks of one part call their places by the same noun: lead condition and lead resistance.</summary>
    private static bool IsSamePart(Check check, Check? other) =>
        other is not null && (other.Id == check.Id || (check.PlaceNoun is not null && other.PlaceNoun == check.PlaceNoun));
}
