using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>A garage with two vehicles, one of which holds an entry of most kinds that can be searched for and a recording
/// that waits.</summary>
internal static class FilledGarage
{
    /// <summary>Makes it in a folder and leaves it open.</summary>
    public static Garage In(TempFolder folder)
    {
        var garage = Garage.Open(folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, new("Marigold", "1968 saloon", null));
        garage.AddVehicle(Some.Technician, new("Teasel", "1971 saloon", null), new PrivateFactsNoted("Ana Lindqvist", "", "ZZ-000-42"));
        var first = garage.StartInspection("teasel");
        garage.Append("teasel", Some.Technician, state =>
        [
            new RecordingKept(first, Some.Recording, 3.2, null),
            new TranscriptMade(state.NextSequence, "Number three, nine kilohms.", [], true, "m", ""),
            new NoteWritten(first, null, "Was parked in Hauptstraße, next to a crème brûlée."),
            new ObservationMade(first, "plug-condition", 3, "burnt", false, null),
            new ObservationMade(first, "rotor-blade", 3, "burnt", true, null),
            new ReadingDecided(first, "lead-resistance", 3, new Measuring.Bracket(1, 2), "9k", null, null, null, []),
            new CheckLeftOut(first, "ignition-timing", "No timing light."),
            new LooseEndOpened(first, "Coil lead off", "Put it back", null, null, null),
            new LooseEndWaived(state.NextSequence + 7, "The car stays on the stand."),
            new InspectionClosed(first),
        ]);
        var second = garage.StartInspection("teasel");
        garage.Append("teasel", Some.Technician, _ => [new RecordingKept(second, Some.Recording, 1, null)]);
        return garage;
    }

    /// <summary>All that the index knows, in a text.</summary>
    public static string Everything(Garage garage) => string.Join(
        '\n',
        [
            .. garage.Vehicles().Select(row => row.ToString()),
            .. garage.WaitingRecordings().Select(row => row.ToString()),
            .. "abcdefghijklmnopqrstuvwxyz0123456789".SelectMany(c => garage.Search($"{c}")).Select(row => row.ToString()),
        ]);
}
