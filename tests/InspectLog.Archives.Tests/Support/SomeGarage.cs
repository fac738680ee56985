using System.Text;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.Archives.Tests.Support;

/// <summary>A small invented garage of one vehicle, with all that a profile may withhold.</summary>
internal static class SomeGarage
{
    public const string Technician = "Tess Okafor";
    public const string Owner = "Ana Lindqvist";
    public const string Vin = "ZZA00000000004217";
    public const string PrivateNote = "Owner says the tank leaks, keep this to ourselves";
    public const string OpenNote = "Rotor burnt at the tip";
    public const string SheetText = """{"invented":"sheet"}""";

    public static FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 30, 0, TimeSpan.Zero));

    public static Garage Open(string folder) => Garage.Open(folder, Clock);

    /// <summary>Makes the garage and gives the vehicle's id.</summary>
    public static string Make(string folder, int notes = 0)
    {
        using var garage = Open(folder);
        var sheet = garage.Sheets.Keep(Encoding.UTF8.GetBytes(SheetText));
        var picture = garage.Media.Keep(Photo("front"), "image/jpeg");
        var id = garage.AddVehicle(
            Technician,
            new VehicleAdded("Marigold", "1968 saloon, straight six", null),
            new PrivateFactsNoted(Owner, "ana@example.org", Vin),
            new VehiclePictured(picture));
        var inspection = garage.Append(id, Technician, _ => [new InspectionStarted("invented", 1, sheet, Technician, 81234.5, "km")])
            .OpenInspection!.Number;
        Capture(garage, id, inspection);
        for (var n = 0; n < notes; n++)
        {
            garage.Append(id, Technician, _ => [new NoteWritten(inspection, null, $"Note {n}: nothing to see")]);
        }

        garage.Append(id, Technician, _ => [new InspectionClosed(inspection)]);
        return id;
    }

    /// <summary>Records one thing more.</summary>
    public static void Note(string folder, string vehicle, string text)
    {
        using var garage = Open(folder);
        garage.Append(vehicle, Technician, state => [new NoteWritten(state.Inspections[0].Number, null, text)]);
    }

    public static byte[] Photo(string what) => [0xFF, 0xD8, 0xFF, .. Encoding.UTF8.GetBytes($"a photo of the {what}, taken at 59.9 N 10.7 E")];

    public static byte[] Sound(string what) => [.. "RIFF"u8, .. Encoding.UTF8.GetBytes($"somebody saying {what}")];

    private static void Capture(Garage garage, string id, long inspection)
    {
        var sound = garage.Media.Keep(Sound("lead three is nine kilohms"), "audio/wav");
        var secret = garage.Media.Keep(Sound("between us, it was in the ditch"), "audio/wav");
        var shown = garage.Media.Keep(Photo("rotor"), "image/jpeg");
        var hidden = garage.Media.Keep(Photo("number plate"), "image/png");
        long Next(params EntryBody[] bodies) => garage.Append(id, Technician, _ => bodies).NextSequence - bodies.Length;

        var recording = Next(new RecordingKept(inspection, sound, 2.5, null));
        Next(new TranscriptMade(recording, "Lead three is nine kilohms.", [], true, "invented.bin", new string('d', 64)));
        var aside = Next(new RecordingKept(inspection, secret, 3.1, null));
        Next(new TranscriptMade(aside, "Between us, it was in the ditch.", [], true, "invented.bin", new string('d', 64)));
        Next(new FindingsProposed(aside, [new("observation", "body", null, null, null, null, "bent", false, null, "in the ditch", 0, 12, [])]));
        Next(new WordsCorrected(aside, "Between us, it lay in the quarry."));
        Next(new PhotoKept(inspection, shown, 4032, 3024, "rotor", null));
        var plate = Next(new PhotoKept(inspection, hidden, 4032, 3024, null, null));
        var marks = Next(new PhotoMarked(plate, [new(MarkShape.Ring, [new(0.1, 0.1), new(0.4, 0.3)]) { Text = "plate of the neighbour" }]));
        Next(new EntryWithdrawn(marks, "the neighbour would not like it"));
        Next(new NoteWritten(inspection, null, OpenNote));
        var note = Next(new NoteWritten(inspection, null, "Something else") );
        Next(new NoteWritten(inspection, null, PrivateNote) { Amends = note });
        Next(new ReportChoice(note, false), new ReportChoice(plate, false), new ReportChoice(aside, false));
        Next(new ReadingDecided(inspection, "lead-resistance", 3, new DisplayedReading([9000], new(0.8, 3), 10), "9k", null, null, null, []));
    }
}
