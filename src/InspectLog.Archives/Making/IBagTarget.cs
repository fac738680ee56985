namespace InspectLog.Archives.Making;

/// <summary>Where a bag is written: a folder, or a ZIP. Under its name it appears whole, or not at all; what was begun and not
/// completed is gone when this is disposed.</summary>
public interface IBagTarget : IDisposable
{
    /// <summary>Writes one file.</summary>
    /// <param name="path">Its path in the bag.</param>
    /// <param name="length">How many bytes it will have, as far as that is known; of what is not, at most four gigabytes are
    /// taken.</param>
    /// <param name="write">Writes its bytes.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    Task AddAsync(string path, long? length, Func<Stream, Task> write);

    /// <summary>Brings everything to the disk and gives it its name.</summary>
    /// <returns>Where it is now.</returns>
    /// <exception cref="IOException">It could not be brought there.</exception>
    string Complete();
}
