using Microsoft.Win32.SafeHandles;

namespace InspectLog.Journal.Storage;

/// <summary>The few acts on which it depends that nothing acknowledged is lost. A seam, so that tests can make
/// each of them fail.</summary>
internal interface IDurable
{
    /// <summary>Opens a file as the disk has it, not as the system remembers having been asked to write it. The two
    /// differ after a sync that failed.</summary>
    FileStream OpenAfresh(string path);

    /// <summary>Writes bytes at a place in a file.</summary>
    /// <exception cref="IOException">They were not all written.</exception>
    void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at);

    /// <summary>Cuts a file off.</summary>
    /// <param name="file">The file.</param>
    /// <param name="length">How many of its bytes stay.</param>
    /// <exception cref="IOException">It could not be cut.</exception>
    void Cut(SafeFileHandle file, long length);

    /// <summary>Returns when what was written to the file is on disk.</summary>
    /// <exception cref="IOException">The system could not say so; the bytes may be lost.</exception>
    void Sync(SafeFileHandle file);

    /// <summary>Returns when the names in the folder are on disk.</summary>
    /// <exception cref="IOException">The system could not say so.</exception>
    void SyncFolder(string folder);
}
