namespace InspectLog.Journal.Storage;

/// <summary>The check sheets that inspections pin, each named by the SHA-256 of its bytes. Written once, never changed.
/// </summary>
public sealed class SheetStore
{
    private readonly SheetFiles _files;
    private readonly IncomingFiles _incoming;
    private readonly IDurable _durable;
    private readonly WriteLatch _latch;

    internal SheetStore(string root, IDurable durable, WriteLatch latch)
    {
        _files = new SheetFiles(root);
        _incoming = new IncomingFiles(root, durable);
        _durable = durable;
        _latch = latch;
    }

    /// <summary>The sheets of a folder, for a program that only looks: nothing can be kept.</summary>
    internal static SheetStore ForReading(string root)
    {
        var shut = new WriteLatches();
        shut.Gate.Close();
        return new(root, new Durable(), shut.Sheets);
    }

    /// <summary>The folder.</summary>
    public string Folder => _files.Root;

    /// <summary>Keeps a sheet: when this returns its bytes are on disk. Keeping the same bytes twice keeps them once; bytes
    /// in their place that are not its own are replaced.</summary>
    /// <param name="content">The bytes of its file.</param>
    /// <returns>Its SHA-256, lower-case hex.</returns>
    /// <exception cref="JournalReadOnlyException">The disk is full or a sync failed. Nothing was acknowledged.</exception>
    public string Keep(ReadOnlySpan<byte> content)
    {
        var sha256 = SheetFiles.HashOf(content);
        _latch.Guard(content, bytes => Store(bytes, sha256));
        return sha256;
    }

    /// <summary>The bytes of a kept sheet; null when it is not there, or when what is there are not its bytes.</summary>
    /// <param name="sha256">Its hash, 64 lower-case hex digits; anything else gives null.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public byte[]? Read(string sha256) => _files.Read(sha256);

    /// <summary>Removes what an interrupted <see cref="Keep"/> left behind.</summary>
    internal void RemoveUnfinished() => _incoming.RemoveAll();

    private void Store(ReadOnlySpan<byte> content, string sha256)
    {
        if (_files.Check(sha256) != MediaCondition.Whole)
        {
            File.Move(_incoming.Write(content), _files.PlaceOf(sha256), overwrite: true);
        }

        // Also when the file was there already: whoever put it there may have stopped short of this.
        _durable.SyncFolder(_files.Root);
    }
}
