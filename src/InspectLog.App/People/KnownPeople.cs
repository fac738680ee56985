using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.App.People;

/// <summary>The people who have worked in this garage.</summary>
public static class KnownPeople
{
    /// <summary>Their names, whoever worked last first: who recorded something, and for whom an inspection was begun.
    /// </summary>
    public static IReadOnlyList<string> Of(Garage garage) =>
    [
        .. garage.Vehicles().SelectMany(vehicle => garage.Entries(vehicle.Id)).SelectMany(Names)
            .Where(one => one.Name is not (JournalEntry.Program or PersonAtWork.Nobody) && PersonName.Problem(one.Name) is null)
            .GroupBy(one => one.Name)
            .OrderByDescending(ofOne => ofOne.Max(one => one.Time))
            .Select(ofOne => ofOne.Key),
    ];

    private static IEnumerable<(string Name, DateTimeOffset Time)> Names(JournalEntry entry) =>
        entry.Body is InspectionStarted started
            ? [(entry.Actor, entry.Time), (started.Technician, entry.Time)]
            : [(entry.Actor, entry.Time)];
}
