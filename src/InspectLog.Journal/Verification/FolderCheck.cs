using InspectLog.Journal.Entries;
using InspectLog.Journal.Noted;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>Looks whether a data folder holds the journals that are noted, and its media.</summary>
internal static class FolderCheck
{
    /// <summary>What is missing in a folder, or other than noted.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="read">The journals that could be read, by file.</param>
    public static FolderReport Of(DataFolder folder, IReadOnlyDictionary<string, JournalFacts> read)
    {
        var workshop = read.GetValueOrDefault(folder.Workshop);
        var noted = (workshop?.Pointing ?? []).Aggregate(WorkshopState.Empty, (state, entry) => state.Apply(entry)).Noted;
        return new(
            folder.Root,
            noted.IsAny ? noted.Vehicles.Count : null,
            [
                .. noted.Vehicles.Values.Select(one => Loss(folder, read, one)).OfType<JournalLoss>(),
                .. OfWorkshop(folder, read, noted, workshop),
            ],
            IsMediaMissing(folder, read.Values))
        {
            IsErasureUnfinished = Erasing.PendingErasure.IsIn(folder.Root),
        };
    }

    private static JournalLoss? Loss(
        DataFolder folder, IReadOnlyDictionary<string, JournalFacts> read, NotedJournal noted) =>
        read.TryGetValue(folder.Journal(noted.Id), out var facts)
            ? Loss(noted.Id, (noted.Entries, noted.Head), facts)
            : File.Exists(folder.Journal(noted.Id))
            ? null // it is there and cannot be read, which its own report says
            : new(noted.Id, noted.Entries, noted.Head, Found: null);

    private static JournalLoss? Loss(string? vehicle, (long, string) noted, JournalFacts? facts) =>
        JournalLoss.Of(vehicle, noted, facts?.Hashes.Last ?? 0, sequence => facts?.Hashes.At(sequence));

    private static IEnumerable<JournalLoss> OfWorkshop(
        DataFolder folder, IReadOnlyDictionary<string, JournalFacts> read, NotedHeads noted, JournalFacts? workshop) =>
        workshop is null && File.Exists(folder.Workshop)
            ? []
            : read.Values.Select(facts => facts.Pointing.Select(entry => entry.Body).OfType<WorkshopNoted>().LastOrDefault())
                .OfType<WorkshopNoted>()
                .Select(one => (one.Entries, one.Head))
                .Distinct()
                .Where(one => !noted.LostOfWorkshop.Contains(one))
                .Select(one => Loss(vehicle: null, one, workshop))
                .OfType<JournalLoss>();

    private static bool IsMediaMissing(DataFolder folder, IEnumerable<JournalFacts> read) =>
        !Directory.Exists(folder.Media)
        && read.Any(facts => facts.Pointing.Any(entry => NamedMedia.Of(entry).Count > 0));
}
