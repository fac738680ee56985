using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Making;

/// <summary>Makes what people read of an archive without the program: reports and tables. Who makes it knows sheets and their
/// words, of which this room knows nothing.</summary>
public interface IReadableParts
{
    /// <summary>The parts, to be written one after the other.</summary>
    /// <param name="record">What the archive holds; nothing else may be read in them.</param>
    IEnumerable<ReadablePart> Of(ReadableRecord record);
}

/// <summary>One file to be read by people.</summary>
/// <param name="Path">Its path in the archive, below <c>data</c>.</param>
/// <param name="WriteAsync">Writes it.</param>
public sealed record ReadablePart(string Path, Func<Stream, CancellationToken, Task> WriteAsync);

/// <summary>A vehicle's record as an archive holds it: what is withheld is not in it.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Entries">Its entries.</param>
/// <param name="Source">Where it is kept, for the sheets and the workshop.</param>
/// <param name="PictureOf">An upright copy of a photo, without where it was taken, as JPEG; null where it cannot be shown.</param>
public sealed record ReadableRecord(
    VehicleState Vehicle,
    IReadOnlyList<JournalEntry> Entries,
    VehicleReading Source,
    Func<string, CancellationToken, Task<byte[]?>> PictureOf)
{
    /// <summary>How many entries have no body here and are not said again without it.</summary>
    public int Withheld { get; } = Entries.Count(entry => entry is { IsWithheld: true, IsRestated: false });
}

/// <summary>Makes clean copies of photos.</summary>
public interface ICleanCopies
{
    /// <summary>An upright copy, without where and with what it was taken, as JPEG; null where the photo cannot be shown.</summary>
    /// <param name="original">The original; it can seek. Whoever gives it closes it.</param>
    /// <param name="stop">Gives it up.</param>
    Task<byte[]?> OfAsync(Stream original, CancellationToken stop);
}

/// <summary>How far the making of an archive is.</summary>
/// <param name="Done">Bytes that were written.</param>
/// <param name="Of">Bytes there are to write, as far as they are known before.</param>
public readonly record struct ArchiveProgress(long Done, long Of);

/// <summary>No archive can be made: its message says why, and what to do.</summary>
public sealed class ArchiveRefusedException(string message) : Exception(message);
