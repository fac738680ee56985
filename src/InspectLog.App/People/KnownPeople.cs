using InspectLog.Journal;
using InspectLog.Journal.Record;
using System.Collections.Immutable;

namespace InspectLog.App.People;

/// <summary>The people who have worked in this garage.</summary>
public static class KnownPeople
{
    /// <summary>Their names, whoever worked last first: who recorded something, and for whom an inspection was begun.
    /// </summary>
    public static IReadOnlyList<string> Of(Garage garage) =>
    [
        .. garage.Vehicles().SelectMany(vehicle => garage.FindVehicle(vehicle.Id)?.People ?? Nobody)
            .Where(one => one.Key is not (JournalEntry.Program or PersonAtWork.Nobody) && PersonName.Problem(one.Key) is null)
            .GroupBy(one => one.Key)
            .OrderByDescending(ofOne => ofOne.Max(one => one.Value))
            .ThenBy(ofOne => ofOne.Key, StringComparer.Ordinal)
            .Select(ofOne => ofOne.Key),
    ];

    private static readonly ImmutableDictionary<string, DateTimeOffset> Nobody = ImmutableDictionary<string, DateTimeOffset>.Empty;
}
