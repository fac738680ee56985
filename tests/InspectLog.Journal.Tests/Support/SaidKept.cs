using System.Globalization;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Tests.Support;

/// <summary>What a process said is kept, held against a data folder.</summary>
internal sealed class SaidKept
{
    private readonly List<(string Vehicle, long Sequence, string Hash)> _entries = [];
    private readonly List<MediaFile> _media = [];

    public int Count => _entries.Count + _media.Count;

    /// <summary>Takes note of a line of <see cref="OneInspection"/>; other lines are left.</summary>
    public void Add(string line)
    {
        switch (line.Split(' '))
        {
            case ["kept", var vehicle, var sequence, var hash]:
                _entries.Add((vehicle, long.Parse(sequence, CultureInfo.InvariantCulture), hash));
                break;
            case ["medium", var sha256, var bytes]:
                _media.Add(new(sha256, long.Parse(bytes, CultureInfo.InvariantCulture), "application/octet-stream"));
                break;
        }
    }

    /// <summary>What of it a garage does not have.</summary>
    public IReadOnlyList<string> MissingIn(Garage garage) =>
    [
        .. _entries.Where(said => garage.FindVehicle(said.Vehicle) is null
            || garage.Entries(said.Vehicle).FirstOrDefault(entry => entry.Sequence == said.Sequence)?.Hash != said.Hash)
            .Select(said => $"entry {said.Sequence}"),
        .. _media.Where(file => garage.Media.Check(file) != MediaCondition.Whole).Select(file => $"medium of {file.Bytes} bytes"),
    ];
}
