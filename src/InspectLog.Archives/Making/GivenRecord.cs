using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Making;

/// <summary>A vehicle's record as it is given to somebody by a profile, without an archive being made.</summary>
public sealed class GivenRecord : IDisposable
{
    private readonly Pictures _pictures;

    /// <param name="source">The vehicle's record.</param>
    /// <param name="profile">What of it is given.</param>
    /// <param name="copies">Makes clean copies of photos.</param>
    public GivenRecord(VehicleReading source, ArchiveProfile profile, ICleanCopies copies)
    {
        var contents = ArchiveContents.Of(source, profile);
        _pictures = new Pictures(contents, copies);
        Record = new(contents.Vehicle, contents.Entries, source, _pictures.OfAsync);
    }

    /// <summary>What is given; nothing else may be told.</summary>
    public ReadableRecord Record { get; }

    /// <inheritdoc/>
    public void Dispose() => _pictures.Dispose();
}
