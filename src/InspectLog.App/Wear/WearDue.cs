using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Wear;

/// <summary>When a part that wears is due, by date and by distance. Pure.</summary>
/// <param name="On">The day it is due; null where time does not matter.</param>
/// <param name="At">Odometer reading it is due at, in <paramref name="Unit"/>; null where distance does not matter or
/// the odometer at fitting is not known.</param>
/// <param name="Unit">Unit of the distances.</param>
/// <param name="DaysLeft">Days until then; 0 and less when it is due. Null without a day.</param>
/// <param name="DistanceLeft">Distance until then by the last odometer reading, in <paramref name="Unit"/>; 0 and less
/// when it is due. Null where it cannot be said.</param>
/// <param name="Doubt">Why the distance cannot be said although the part has one; null otherwise.</param>
public sealed record WearDue(
    DateOnly? On, double? At, Unit Unit, int? DaysLeft, double? DistanceLeft, string? Doubt)
{
    /// <summary>Whether it is due by either.</summary>
    public bool IsDue => DaysLeft <= 0 || DistanceLeft <= 0;

    /// <summary>Works out when a part is due.</summary>
    /// <param name="part">The part.</param>
    /// <param name="today">The day in the workshop.</param>
    /// <param name="known">The last odometer reading noted; null when there is none.</param>
    public static WearDue Of(WearPart part, DateOnly today, KnownOdometer? known)
    {
        var (interval, fitted) = (part.Interval, part.Fitted);
        var unit = KnownOdometer.UnitOf(interval.DistanceUnit);
        var on = interval.Months is { } months ? LatestDayOf(fitted.On, months) : (DateOnly?)null;
        var days = on?.DayNumber - today.DayNumber;
        if (interval.Distance is not { } distance)
        {
            return new(on, null, unit, days, null, null);
        }

        if (fitted.Odometer is not { } reading)
        {
            return new(on, null, unit, days, null, "The odometer was not noted when it was fitted, so its distance is not known.");
        }

        var from = In(unit, reading, KnownOdometer.UnitOf(fitted.OdometerUnit));
        var now = known is null ? (double?)null : In(unit, known.Reading, known.Unit);
        return now < from
            ? new(on, from + distance, unit, days, null, "The last odometer reading is below the one at fitting. Check both.")
            : new(on, from + distance, unit, days, from + distance - now, null);
    }

    /// <summary>So many months on; a calendar that ends before them has no such day, so the part is never due by it.</summary>
    private static DateOnly? LatestDayOf(DateOnly from, int months) =>
        ((from.Year * 12L) + from.Month + months) / 12 > DateOnly.MaxValue.Year ? null : from.AddMonths(months);

    private static double In(Unit unit, double reading, Unit from) => unit.FromBase(from.ToBase(reading));
}
