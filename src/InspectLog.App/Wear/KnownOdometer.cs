using InspectLog.App.Ui;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Wear;

/// <summary>How far a vehicle has been driven, as far as anybody noted it.</summary>
/// <param name="On">The day it was noted.</param>
/// <param name="Reading">The odometer as shown.</param>
/// <param name="Unit">Kilometres or miles.</param>
public sealed record KnownOdometer(DateOnly On, double Reading, Unit Unit)
{
    /// <summary>The last reading noted, at an inspection or a fitting; null when there is none.</summary>
    public static KnownOdometer? LastOf(VehicleState vehicle) =>
        vehicle.Inspections
            .Where(inspection => inspection.How.Odometer is not null)
            .Select(inspection => new KnownOdometer(
                Times.DayOf(inspection.Started), inspection.How.Odometer!.Value, UnitOf(inspection.How.OdometerUnit)))
            .Concat(vehicle.WearParts
                .SelectMany(part => part.Fittings)
                .Where(fitting => fitting.Odometer is not null)
                .Select(fitting => new KnownOdometer(fitting.On, fitting.Odometer!.Value, UnitOf(fitting.OdometerUnit))))
            .OrderBy(known => known.On)
            .LastOrDefault();

    /// <summary>The unit a record names: miles, or else kilometres.</summary>
    public static Unit UnitOf(string? symbol) => symbol == Units.Mile.Symbol ? Units.Mile : Units.Kilometre;
}
