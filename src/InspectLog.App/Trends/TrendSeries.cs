using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>A reading of one place in one inspection, as a point of a trend.</summary>
/// <param name="Inspection">The inspection; its last reading of the place counts.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Value">Its best estimate, base unit.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty, base unit.</param>
/// <param name="IsOfAnEarlierPart">Whether the part was replaced or adjusted after it, so that it says nothing of what
/// is there now.</param>
public sealed record TrendReading(
    InspectionState Inspection,
    Recorded<ReadingDecided> Reading,
    double Value,
    double ExpandedUncertainty,
    bool IsOfAnEarlierPart);

/// <summary>What was read at one place over the inspections of a vehicle.</summary>
/// <param name="Check">The check, with the limits in force on this vehicle now.</param>
/// <param name="Measurand">What it measures.</param>
/// <param name="Cylinder">The place; null for a check done once.</param>
/// <param name="Readings">One a inspection, oldest first; two or more.</param>
public sealed record TrendSeries(
    Check Check, Measurand Measurand, int? Cylinder, IReadOnlyList<TrendReading> Readings)
{
    /// <summary>Inspections a series needs to be worth a look.</summary>
    private const int Fewest = 2;

    /// <summary>Readings of what is there now.</summary>
    public IReadOnlyList<TrendReading> Current { get; } = [.. Readings.Where(reading => !reading.IsOfAnEarlierPart)];

    /// <summary>Every place of a vehicle that was read in two inspections or more, in the order of its sheet.</summary>
    public static IReadOnlyList<TrendSeries> Of(VehicleState vehicle) =>
    [
        .. from sheet in SheetsOf(vehicle)
           from check in sheet.Checks
           let measurand = check.Measurand
           where measurand is not null
           from cylinder in Standings.PlacesOf(sheet, check)
           let readings = ReadingsOf(vehicle, sheet, check, cylinder)
           where readings.Count >= Fewest
           select new TrendSeries(check, measurand, cylinder, readings),
    ];

    /// <summary>One place of a vehicle; null where it was not read twice.</summary>
    public static TrendSeries? Find(VehicleState vehicle, string check, int? cylinder) =>
        Of(vehicle).FirstOrDefault(series => series.Check.Id == check && series.Cylinder == cylinder);

    private static IEnumerable<CheckSheet> SheetsOf(VehicleState vehicle) =>
        BuiltInSheets.All
            .Where(sheet => vehicle.Inspections.Exists(inspection => inspection.How.Sheet == sheet.Id))
            .Select(sheet => LimitsFor.Vehicle(vehicle, sheet));

    private static List<TrendReading> ReadingsOf(VehicleState vehicle, CheckSheet sheet, Check check, int? cylinder)
    {
        var renewed = LastRenewal(vehicle, sheet, check, cylinder);
        return [.. vehicle.Inspections
            .Where(inspection => inspection.How.Sheet == sheet.Id)
            .Select(inspection => (Inspection: inspection, Reading: inspection.Readings.FindLast(
                one => one.Body.Check == check.Id && one.Body.Cylinder == cylinder)))
            .Where(one => one.Reading is not null)
            .Select(one => PointOf(one.Inspection, one.Reading!, renewed))];
    }

    private static TrendReading PointOf(InspectionState inspection, Recorded<ReadingDecided> reading, long renewed)
    {
        var expanded = reading.Body.Conformity?.ExpandedUncertainty ?? Estimate.Of(reading.Body.Reading).ExpandedUncertainty;
        return new(inspection, reading, RecordWords.BestEstimate(reading.Body), expanded, reading.Sequence < renewed);
    }

    /// <summary>Sequence of the last entry by which the part at the place became another one: it was replaced, or this
    /// very check was adjusted. 0 where that never happened.</summary>
    private static long LastRenewal(VehicleState vehicle, CheckSheet sheet, Check check, int? cylinder) =>
        vehicle.Inspections
            .SelectMany(inspection => inspection.Actions)
            .Where(done => done.Body.Cylinder is null || done.Body.Cylinder == cylinder)
            .Where(done => done.Body.Action switch
            {
                PartActions.Replaced => IsSamePart(check, sheet.Find(done.Body.Check)),
                PartActions.Adjusted => done.Body.Check == check.Id,
                _ => false,
            })
            .Select(done => done.Sequence)
            .DefaultIfEmpty(0)
            .Max();

    /// <summary>Checks of one part call their places by the same noun: lead condition and lead resistance.</summary>
    private static bool IsSamePart(Check check, Check? other) =>
        other is not null && (other.Id == check.Id || (check.PlaceNoun is not null && other.PlaceNoun == check.PlaceNoun));
}
