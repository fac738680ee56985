using System.Text;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Sealing;

/// <summary>The seals of a vehicle: files beside its journal, in the folder <c>seals</c>. Written once, never changed.</summary>
/// <remarks>They are no entries: an entry would be after all that it seals, so that a journal would never be sealed to its end,
/// and a seal could neither be handed on by itself nor be given a time stamp later.</remarks>
public sealed class SealFolder
{
    private const string Name = "seals";
    private const string StampEnding = ".tst";
    private const long Largest = 16 << 20;

    private readonly string _folder;
    private readonly IDurable _durable;

    internal SealFolder(string vehicleFolder, IDurable durable) =>
        (_folder, _durable) = (Path.Combine(vehicleFolder, Name), durable);

    /// <summary>The seals of a vehicle in a data folder.</summary>
    /// <exception cref="UnknownVehicleException">The id is none.</exception>
    public static SealFolder Of(string dataFolder, string vehicleId) => VehicleIds.IsId(vehicleId)
        ? new(new DataFolder(Path.GetFullPath(dataFolder)).Vehicle(vehicleId), new Durable())
        : throw new UnknownVehicleException(vehicleId);

    /// <summary>The seals beside a journal.</summary>
    public static SealFolder Beside(string journalFile) =>
        new(Path.GetDirectoryName(Path.GetFullPath(journalFile))!, new Durable());

    /// <summary>All seals with their time stamps, the newest last: by entries, then by time. Those that cannot be read come
    /// first. Nothing is written.</summary>
    public IReadOnlyList<KeptSeal> Read() => Directory.Exists(_folder)
        ? KeptSeal.InOrder(Directory.GetFiles(_folder, "*" + SignedSeal.Ending).Select(ReadOne))
        : [];

    /// <summary>Keeps a seal: when this returns it is on disk.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Keep(SignedSeal seal) => Store(seal.FileName, Encoding.ASCII.GetBytes(seal.Compact));

    /// <summary>Keeps a time stamp beside its seal, in the place of one that was there.</summary>
    /// <param name="seal">The name of the seal's file.</param>
    /// <param name="stamp">The stamp, which was verified.</param>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Attach(string seal, SealStamp stamp) => Store(StampOf(seal), stamp.Token.ToArray());

    private static string StampOf(string seal) => Path.ChangeExtension(seal, StampEnding);

    private KeptSeal ReadOne(string path)
    {
        try
        {
            var seal = Encoding.Latin1.GetString(Bytes(path));
            var stamp = StampOf(path);
            return KeptSeal.Of(Path.GetFileName(path), seal, File.Exists(stamp) ? Bytes(stamp) : null);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            return new(Path.GetFileName(path)) { Problem = problem.Message };
        }
    }

    private static byte[] Bytes(string path) => new FileInfo(path).Length <= Largest
        ? File.ReadAllBytes(path)
        : throw new IOException("it is too long");

    private void Store(string name, byte[] bytes)
    {
        var place = Path.Combine(_folder, name);
        if (File.Exists(place) && File.ReadAllBytes(place).AsSpan().SequenceEqual(bytes))
        {
            return;
        }

        Directory.CreateDirectory(_folder);
        WholeFile.Write(_durable, place, bytes);
        _durable.SyncFolder(Path.GetDirectoryName(_folder)!);
    }
}
