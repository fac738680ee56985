using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Recordings and photos, named by the SHA-256 of their bytes. Written once, never changed.</summary>
public sealed class MediaStore
{
    /// <summary>Keeps a file: written under another name, synced, renamed, and the folder synced. When this returns
    /// the bytes are on disk. Keeping the same bytes twice keeps them once.</summary>
    /// <param name="content">The bytes.</param>
    /// <param name="type">Media type.</param>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    public MediaFile Keep(ReadOnlySpan<byte> content, string type) => throw new NotSupportedException("Journal room");

    /// <summary>Path of a kept file; null when it is not there.</summary>
    /// <param name="sha256">Its name, 64 lower-case hex digits; anything else gives null.</param>
    public string? PathOf(string sha256) => throw new NotSupportedException("Journal room");
}
