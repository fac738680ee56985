using System.Globalization;
using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests.Support;

/// <summary>A process that does one whole inspection, recordings and photos included, and says what it was told is kept.
/// Everything happens on its first thread, so that a tracer that looks at that one alone sees all of it.</summary>
internal static class OneInspection
{
    /// <summary>What it says when it has come to its end.</summary>
    public const string Done = "done";

    private const int LargePhoto = 60_000;

    public static int Run(string folder, IDurable durable)
    {
        try
        {
            using var garage = Garage.Open(folder, TimeProvider.System, durable);
            Work(garage);
        }
        catch (Exception refusal) when (refusal is IOException or JournalReadOnlyException)
        {
            Say($"refused: {refusal.Message}");
        }

        Say(Done);
        return 0;
    }

    private static void Work(Garage garage)
    {
        Attempt(() => garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter)));
        var id = garage.Vehicles().Select(vehicle => vehicle.Id).FirstOrDefault();
        Attempt(() => id ??= garage.AddVehicle(Some.Technician, Some.Vehicle()));
        if (id is null)
        {
            return;
        }

        SayKept(garage, id);
        Do(garage, id, _ => [new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Some.Technician, null, null)]);
        var number = garage.FindVehicle(id)?.OpenInspection?.Number ?? 0;
        for (var plug = 1; plug <= 3; plug++)
        {
            var (recording, photo) = (Keep(garage, Bytes(900 * plug), "audio/wav"), Keep(garage, Bytes(LargePhoto + plug), "image/jpeg"));
            if (recording is not null && photo is not null)
            {
                Do(garage, id, _ =>
                [
                    new RecordingKept(number, recording, 1, "plug-condition"),
                    new PhotoKept(number, photo, 4032, 3024, "plug-condition", plug),
                ]);
            }

            Do(garage, id, _ => [new ReadingDecided(number, "plug-gap", plug, new DisplayedReading([0.7], new(0.8, 3), 0.01), "0.7", null, null, null, [])]);
        }

        Do(garage, id, _ => [new InspectionClosed(number)]);
    }

    private static MediaFile? Keep(Garage garage, byte[] content, string type)
    {
        MediaFile? kept = null;
        Attempt(() =>
        {
            kept = garage.Media.Keep(content, type);
            Say(string.Create(CultureInfo.InvariantCulture, $"medium {kept.Sha256} {kept.Bytes}"));
        });
        return kept;
    }

    private static void Do(Garage garage, string id, Func<VehicleState, IReadOnlyList<EntryBody>> decide) => Attempt(() =>
    {
        garage.Append(id, Some.Technician, decide);
        SayKept(garage, id);
    });

    // Everything that was acknowledged so far: the last says the most. Of a journal that could not be read back nothing is there.
    private static void SayKept(Garage garage, string id)
    {
        if (garage.Entries(id) is [.., var last])
        {
            Say(string.Create(CultureInfo.InvariantCulture, $"kept {id} {last.Sequence} {last.Hash}"));
        }
    }

    private static void Attempt(Action act)
    {
        try
        {
            act();
        }
        catch (Exception refusal) when (refusal is IOException or JournalReadOnlyException)
        {
            Say($"refused: {refusal.Message}");
        }
    }

    private static byte[] Bytes(int length)
    {
        var bytes = new byte[length];
        new Random(length).NextBytes(bytes);
        return bytes;
    }

    private static void Say(string line) => Console.Out.WriteLine(line.Replace('\n', ' '));
}
