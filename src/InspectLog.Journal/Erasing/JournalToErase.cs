using System.Collections.Immutable;
using System.Text.Json;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Erasing;

/// <summary>A journal that is looked through for a person.</summary>
/// <param name="VehicleId">The vehicle; null for the workshop.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Path">Its file, below the data folder.</param>
/// <param name="Bytes">The bytes of its file.</param>
/// <param name="Entries">Its entries: as many as it has lines, since it is sound.</param>
/// <param name="Vehicle">What it says as a whole; null for the workshop.</param>
internal sealed record JournalToErase(
    string? VehicleId, string Name, string Path, ReadOnlyMemory<byte> Bytes, ImmutableList<JournalEntry> Entries, VehicleState? Vehicle)
{
    /// <summary>The lines, without their ends.</summary>
    public IEnumerable<ReadOnlyMemory<byte>> Lines()
    {
        for (var at = 0; at < Bytes.Length;)
        {
            var length = Bytes.Span[at..].IndexOf((byte)'\n');
            yield return Bytes.Slice(at, length);
            at += length + 1;
        }
    }

    /// <summary>The bodies as they are spelled, those that were said again among them; null of what is withheld.</summary>
    public List<JsonElement?> Bodies()
    {
        var again = Entries.Select(entry => entry.Body).OfType<EntryRestated>().GroupBy(one => one.Entry).ToDictionary(one => one.Key, one => one.Last().Says);
        return [.. Lines().Zip(Entries).Select(pair => BodyOf(pair.First) ?? (again.TryGetValue(pair.Second.Sequence, out var says) ? says : null))];
    }

    /// <summary>Notes and photos that are left out of reports.</summary>
    public IEnumerable<long> LeftOut() => (Vehicle?.Inspections ?? [])
        .SelectMany(inspection => inspection.Everything.OfType<Capture>())
        .Where(capture => capture.History.IsLeftOutOfReport)
        .Select(capture => capture.Sequence);

    private static JsonElement? BodyOf(ReadOnlyMemory<byte> line)
    {
        using var document = JsonDocument.Parse(line);
        return document.RootElement.TryGetProperty("body", out var body) ? body.Clone() : null;
    }
}
