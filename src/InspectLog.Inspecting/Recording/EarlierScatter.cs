using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>How far readings of a check scatter, from repeats on record: all places of the vehicle, all its inspections,
/// the same instrument with the same accuracy and step. Pure.</summary>
public static class EarlierScatter
{
    private const string From = "repeats of the same check on this vehicle, with the same instrument";

    /// <summary>What is known of the scatter of a reading; null where there are no repeats.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="given">The reading.</param>
    /// <param name="amends">Sequence of the first entry of the reading it puts right, which is left out; null for
    /// none.</param>
    public static KnownScatter? Of(VehicleState vehicle, GivenReading given, long? amends) =>
        KnownScatter.Pool(
            from inspection in vehicle.Inspections
            from repeats in inspection.Repeats
            where repeats.Sequence != amends && repeats.Check == given.Check.Id && IsAlike(repeats, given.Instrument?.OnRangeFor(given.Values))
            select repeats.Values) is { } known
            ? known with { From = From }
            : null;

    // A record from before such numbers were refused says nothing of scatter, and must not stand in the way of a new one.
    private static bool IsAlike(Repeats earlier, Instrument? instrument) =>
        instrument is not null
        && earlier.Values.All(Workable.Is)
        && earlier.Instrument == new RepeatedWith(instrument.Id, instrument.Accuracy, instrument.Resolution);
}
