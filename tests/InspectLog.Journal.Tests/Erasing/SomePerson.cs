using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Erasing;

/// <summary>A garage that knows an invented person in every way it can, and what of her must be nowhere afterwards.</summary>
internal static class SomePerson
{
    public const string Name = "Ana Lindqvist";

    /// <summary>Words that must be nowhere, in whatever case.</summary>
    public static readonly IReadOnlyList<string> Words = ["lindqvist", "ana@example.org", "496 0000", "zz-000-42"];

    public static readonly byte[] Voice = Bytes(1);
    public static readonly byte[] Picture = Bytes(2);
    public static readonly byte[] Told = Bytes(3);
    public static readonly byte[] Shared = Bytes(4);

    public static readonly ErasureRequest Request = new(Name, AsWorker: true, "the former owner", "a privacy request");

    /// <summary>Makes the garage; gives the sequence of the recording by her.</summary>
    public static void Make(string folder)
    {
        using (var garage = Garage.Open(folder, Some.Clock()))
        {
            Marigold(garage, garage.AddVehicle(Some.Technician, Some.Vehicle()));
            Teasel(garage, garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
            garage.AppendToWorkshop(Some.Technician, new AccessGiven(Name, $"{Name}’s phone", AccessRole.Technician, new string('d', 64)));
        }

        var hash = MediaNamed(Picture);
        Put(folder, $"copies/{hash[..2]}/{hash}-view.jpg", Picture);
        Put(folder, $"copies/{hash[..2]}/{hash}.json", "{}"u8);
        Put(folder, "set-aside/marigold-20261125T103000Z", Encoding.UTF8.GetBytes($"{{\"owner\":\"{Name}\"}}"));
        Put(folder, "set-aside/teasel-20261125T103000Z", "of nobody"u8);
        Put(folder, "archives/marigold.zip", Voice);
        Put(folder, "pieces/one", Picture);
    }

    /// <summary>What of her is still in a folder: files, each with what it holds.</summary>
    public static IReadOnlyList<string> Remains(string folder, bool asWorker = true) =>
    [
        .. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => (File: Path.GetRelativePath(folder, file), Bytes: File.ReadAllBytes(file)))
            .SelectMany(one => Words.Where(word => asWorker || word != "lindqvist").Where(word => Encoding.Latin1.GetString(one.Bytes).Contains(word, StringComparison.OrdinalIgnoreCase)).Select(word => $"{one.File}: {word}")
                .Concat(new[] { Voice, Picture, Told }.Where(media => one.Bytes.AsSpan().IndexOf(media.AsSpan(100, 64)) >= 0).Select(_ => $"{one.File}: a medium"))),
    ];

    public static string MediaNamed(byte[] bytes) => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));

    private static void Marigold(Garage garage, string id)
    {
        garage.Append(id, Some.Technician, _ => [new PrivateFactsNoted("Ben Osei", "ben@example.org", "")]);
        garage.Append(id, Some.Technician, _ => [new PrivateFactsNoted(Name, "ana@example.org, 0151 496 0000", "ZZ-000-42")]);
        var inspection = garage.StartInspection(id);
        var recording = garage.Append(id, new(Name, "bench phone"), _ => [new RecordingKept(inspection, garage.Media.Keep(Voice, "audio/wav"), 2, "lead-resistance")]).NextSequence - 1;
        garage.Append(id, "InspectLog", _ => [new TranscriptMade(recording, "Number three, nine kilohms.", [], true, "m", new string('d', 64)), new FindingsProposed(recording, [])]);
        garage.Append(id, Some.Technician, _ => [new ObservationMade(inspection, "plug-condition", 3, "burnt", false, new(recording, 0))]);
        garage.Note(id, $"{Name} says it pinks uphill; ring 0151  496 0000 when it is done");
        var told = garage.Append(id, Some.Technician, _ => [new RecordingKept(inspection, garage.Media.Keep(Told, "audio/wav"), 2, null)]).NextSequence - 1;
        garage.Append(id, "InspectLog", _ => [new TranscriptMade(told, "as ana LINDQVIST told me", [], true, "m", new string('d', 64))]);
        var photo = garage.Append(id, Name, _ => [new PhotoKept(inspection, garage.Media.Keep(Picture, "image/jpeg"), 40, 30, null, null)]).NextSequence - 1;
        garage.Append(id, Some.Technician, _ => [new ReportChoice(photo, false)]);
        garage.Append(id, Some.Technician, _ => [new PhotoMarked(photo, [new(MarkShape.Text, [new(0.5, 0.5)]) { Text = $"{Name} herself" }])]);
        var shared = garage.Append(id, Name, _ => [new PhotoKept(inspection, garage.Media.Keep(Shared, "image/jpeg"), 40, 30, null, null)]).NextSequence - 1;
        garage.Append(id, Some.Technician, _ => [new PhotoMarked(shared, [new(MarkShape.Arrow, [new(0.5, 0.5), new(0.25, 0.5)]) { Text = $"dent {Name} drove" }])]);
        garage.Append(id, Some.Technician, _ => [new InspectionClosed(inspection)]);
    }

    private static void Teasel(Garage garage, string id)
    {
        garage.Append(id, Some.Technician, _ => [new InspectionStarted("ignition-breakerless-6", 1, new string('c', 64), Name, null, null)]);
        garage.Note(id, "Nothing of anybody");
    }

    private static void Put(string folder, string path, ReadOnlySpan<byte> bytes)
    {
        var place = Path.Combine(folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllBytes(place, bytes);
    }

    private static byte[] Bytes(int seed)
    {
        var bytes = new byte[5000];
        new Random(seed).NextBytes(bytes);
        return bytes;
    }
}
