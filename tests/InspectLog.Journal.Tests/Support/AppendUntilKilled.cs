using System.Globalization;
using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Tests.Support;

/// <summary>A process that keeps recordings and appends to two journals as fast as it can, and says on its output
/// what it was told is kept. Its end is to be killed.</summary>
internal static class AppendUntilKilled
{
    public const string Opened = "open";

    public static int Run(string folder)
    {
        using var garage = Garage.Open(folder, TimeProvider.System);
        Say(Opened);
        string[] ids = [Vehicle(garage, "Teasel"), Vehicle(garage, "Heron")];
        Parallel.ForEach(ids, id => Append(garage, id));
        return 0;
    }

    private static string Vehicle(Garage garage, string name)
    {
        var id = garage.Vehicles().FirstOrDefault(vehicle => vehicle.Name == name)?.Id
            ?? garage.AddVehicle(Some.Technician, Some.Vehicle(name));
        Say(id, garage.Entries(id)[^1]);
        return id;
    }

    private static void Append(Garage garage, string id)
    {
        while (true)
        {
            var recording = garage.Media.Keep(RandomNumberGenerator.GetBytes(RandomNumberGenerator.GetInt32(9000)), "audio/wav");
            garage.Append(id, Some.Technician, state =>
            [
                new RecordingKept(1, recording, 1, null),
                new NoteWritten(1, null, new string('n', RandomNumberGenerator.GetInt32(9000))),
            ]);
            foreach (var entry in garage.Entries(id).TakeLast(2))
            {
                Say(id, entry);
            }
        }
    }

    private static void Say(string id, Journal.Record.JournalEntry entry) =>
        Say(string.Create(CultureInfo.InvariantCulture, $"{id} {entry.Sequence} {entry.Hash}"));

    private static void Say(string line) => Console.Out.WriteLine(line);
}
