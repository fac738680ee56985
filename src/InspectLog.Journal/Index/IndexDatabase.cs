using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using LiteDB;
using LiteDB.Engine;

namespace InspectLog.Journal.Index;

/// <summary>The LiteDB database of the index, in a file or in memory.</summary>
internal sealed class IndexDatabase : IDisposable
{
    private readonly LiteDatabase _database;
    private readonly IndexFiles? _files;
    private readonly ILiteCollection<WordingRow> _wordings;

    private IndexDatabase(LiteDatabase database, IndexFiles? files)
    {
        database.UtcDate = true;
        _database = database;
        _files = files;
        Positions = database.GetCollection<PositionRow>("positions");
        Vehicles = database.GetCollection<VehicleRow>("vehicles");
        Texts = database.GetCollection<TextRow>("texts");
        Waiting = database.GetCollection<WaitingRow>("waiting");
        _wordings = database.GetCollection<WordingRow>("wordings");
        Texts.EnsureIndex("words", "$.Words[*]");
    }

    public ILiteCollection<PositionRow> Positions { get; }

    public ILiteCollection<VehicleRow> Vehicles { get; }

    public ILiteCollection<TextRow> Texts { get; }

    public ILiteCollection<WaitingRow> Waiting { get; }

    /// <summary>The version of the wording that the texts are of; null where none was noted.</summary>
    public string? Wording
    {
        get => _wordings.FindById(WordingRow.Only)?.Version;
        set => _wordings.Upsert(new WordingRow { Id = WordingRow.Only, Version = value! });
    }

    /// <summary>Opens or makes a file.</summary>
    public static IndexDatabase InFile(string path)
    {
        var files = new IndexFiles(path);
        LiteDatabase? database = null;
        try
        {
            database = new LiteDatabase(new LiteEngine(files.Settings()), OwnMapper());
            return new IndexDatabase(database, files);
        }
        catch
        {
            database?.Dispose();
            files.Dispose();
            throw;
        }
    }

    /// <summary>Makes a database that lives as long as the process.</summary>
    public static IndexDatabase InMemory() => new(new LiteDatabase(new MemoryStream(), OwnMapper()), files: null);

    /// <summary>Brings entries of a vehicle's journal in, all or none.</summary>
    /// <param name="state">The vehicle after the last of them.</param>
    /// <param name="entries">The entries; never none.</param>
    /// <param name="wording">What they say to people.</param>
    public void Add(VehicleState state, IReadOnlyList<JournalEntry> entries, IEntryWording wording)
    {
        _database.BeginTrans();
        IndexWriter.Write(this, state, entries, wording);
        _database.Commit();
    }

    /// <summary>Takes back what was brought in last, where that failed halfway.</summary>
    public void TakeBack() => _database.Rollback();

    /// <summary>Throws when something that was written is not in the file.</summary>
    /// <exception cref="IOException">It is not. The database must not be used any more.</exception>
    public void ThrowIfNotWritten()
    {
        if (_files?.Failure is { } failure)
        {
            throw new IOException(failure.Message, failure);
        }
    }

    /// <summary>Closes the database in good order, so that <see cref="IndexFiles.WereClosed"/> says so.</summary>
    public void Dispose()
    {
        try
        {
            _database.Dispose();
        }
        finally
        {
            _files?.Dispose();
        }
    }

    /// <summary>A mapper that keeps text as it is; the default one trims it and drops what is empty.</summary>
    private static BsonMapper OwnMapper() => new() { TrimWhitespace = false, EmptyStringToNull = false };
}
