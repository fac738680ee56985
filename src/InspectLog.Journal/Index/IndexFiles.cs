using LiteDB;
using LiteDB.Engine;

namespace InspectLog.Journal.Index;

/// <summary>The two files of the index: its pages, and the log that LiteDB empties into them when it is closed in good
/// order. The log file is there for as long as that has not happened.</summary>
internal sealed class IndexFiles : IDisposable
{
    private readonly string _path;
    private readonly IndexFile _pages;
    private readonly IndexFile _log;
    private bool _closed;

    /// <summary>Opens the files. From now on nothing vouches for them until they are closed in good order.</summary>
    public IndexFiles(string path)
    {
        _path = path;
        IndexSum.Forget(path);
        _pages = new(path);
        _log = new(LogOf(path));
    }

    /// <summary>Why the first write that failed did so; null when all worked.</summary>
    public Exception? Failure => _pages.Failure ?? _log.Failure;

    /// <summary>Whether a file was closed in good order and is still, to the last bit, what it was then.</summary>
    public static bool WereClosed(string path) => !File.Exists(LogOf(path)) && IndexSum.Holds(path);

    /// <summary>Deletes a file and its log.</summary>
    public static void Delete(string path)
    {
        File.Delete(path);
        File.Delete(LogOf(path));
        IndexSum.Forget(path);
    }

    /// <summary>What LiteDB needs to work in them.</summary>
    public EngineSettings Settings() => new() { DataStream = _pages, LogStream = _log, Collation = Collation.Binary };

    /// <summary>Closes the files. Call it once LiteDB has let go of them.</summary>
    public void Dispose()
    {
        if (_closed)
        {
            return;
        }

        _closed = true;
        var emptied = _log.Length == 0;
        _pages.Dispose();
        _log.Dispose();
        if (emptied && Failure is null && IndexSum.Note(_path))
        {
            File.Delete(LogOf(_path));
        }
    }

    private static string LogOf(string path) => Path.ChangeExtension(path, null) + "-log" + Path.GetExtension(path);
}
