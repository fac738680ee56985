using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Noted;

/// <summary>Holds the workshop's journal and those of the vehicles against each other: each notes how far the other was,
/// so that none can lack its end, or be another, without it being seen. Pure.</summary>
internal static class HeadNotes
{
    /// <summary>What journals lack of what was noted of them.</summary>
    /// <param name="noted">What the workshop's journal has noted.</param>
    /// <param name="workshop">The entries of the workshop's journal.</param>
    /// <param name="vehicles">The vehicles there are, with their entries.</param>
    public static IReadOnlyList<JournalLoss> Losses(
        NotedHeads noted, IReadOnlyList<JournalEntry> workshop, IReadOnlyDictionary<string, OpenJournal<VehicleState>.Snapshot> vehicles) =>
    [
        .. noted.Vehicles.Values
            .Select(one => JournalLoss.Of(one.Id, (one.Entries, one.Head), vehicles.GetValueOrDefault(one.Id)?.Entries ?? []))
            .OfType<JournalLoss>(),
        .. OfWorkshop(noted, workshop, vehicles.Values.Select(vehicle => vehicle.State.WorkshopNoted)),
    ];

    /// <summary>What the workshop's journal lacks of what vehicles noted of it.</summary>
    public static IEnumerable<JournalLoss> OfWorkshop(
        NotedHeads noted, IReadOnlyList<JournalEntry> workshop, IEnumerable<WorkshopNoted?> byVehicles) => byVehicles
        .OfType<WorkshopNoted>()
        .Select(one => (one.Entries, one.Head))
        .Distinct()
        .Where(one => !noted.LostOfWorkshop.Contains(one))
        .Select(one => JournalLoss.Of(vehicleId: null, one, workshop))
        .OfType<JournalLoss>();

    /// <summary>How far the vehicles are whose journals grew since they were last noted. One that lacks what was noted is
    /// not noted anew: what is missing must go on being missed.</summary>
    public static IReadOnlyList<NotedJournal> Grown(
        NotedHeads noted, IEnumerable<KeyValuePair<string, IReadOnlyList<JournalEntry>>> vehicles) =>
    [
        .. vehicles.Where(vehicle => vehicle.Value.Count > 0 && IsGrown(noted.Vehicles.GetValueOrDefault(vehicle.Key), vehicle.Value))
            .OrderBy(vehicle => vehicle.Key, StringComparer.Ordinal)
            .Select(vehicle => new NotedJournal(vehicle.Key, vehicle.Value.LastSequence(), vehicle.Value.HashAt(vehicle.Value.Count - 1))),
    ];

    private static bool IsGrown(NotedJournal? noted, IReadOnlyList<JournalEntry> entries) => noted is null
        || (entries.LastSequence() > noted.Entries && entries.HashOf(noted.Entries) == noted.Head);
}
