using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using LiteDB;

namespace InspectLog.Journal.Index;

/// <summary>The LiteDB database of the index, in a file or in memory.</summary>
internal sealed class IndexDatabase : IDisposable
{
    private readonly LiteDatabase _database;

    private IndexDatabase(LiteDatabase database)
    {
        _database = database;
        Positions = database.GetCollection<PositionRow>("positions");
        Vehicles = database.GetCollection<VehicleRow>("vehicles");
        Texts = database.GetCollection<TextRow>("texts");
        Waiting = database.GetCollection<WaitingRow>("waiting");
        Texts.EnsureIndex("words", "$.Words[*]");
    }

    public ILiteCollection<PositionRow> Positions { get; }

    public ILiteCollection<VehicleRow> Vehicles { get; }

    public ILiteCollection<TextRow> Texts { get; }

    public ILiteCollection<WaitingRow> Waiting { get; }

    /// <summary>Opens or makes a file.</summary>
    public static IndexDatabase InFile(string path)
    {
        var place = new ConnectionString { Filename = path, Connection = ConnectionType.Direct, Collation = Collation.Binary };
        return Open(new LiteDatabase(place, OwnMapper()));
    }

    /// <summary>Makes a database that lives as long as the process.</summary>
    public static IndexDatabase InMemory() => Open(new LiteDatabase(new MemoryStream(), OwnMapper()));

    /// <summary>Whether a file was closed in good order: LiteDB deletes its log then.</summary>
    public static bool WasClosed(string path) => File.Exists(path) && !File.Exists(LogOf(path));

    /// <summary>Deletes a file and its log.</summary>
    public static void Delete(string path)
    {
        File.Delete(path);
        File.Delete(LogOf(path));
    }

    /// <summary>Brings entries of a vehicle's journal in, all or none.</summary>
    /// <param name="state">The vehicle after the last of them.</param>
    /// <param name="entries">The entries; never none.</param>
    public void Add(VehicleState state, IReadOnlyList<JournalEntry> entries)
    {
        _database.BeginTrans();
        IndexWriter.Write(this, state, entries);
        _database.Commit();
    }

    /// <inheritdoc/>
    public void Dispose() => _database.Dispose();

    private static IndexDatabase Open(LiteDatabase database)
    {
        try
        {
            database.UtcDate = true;
            return new IndexDatabase(database);
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    private static string LogOf(string path) => Path.ChangeExtension(path, null) + "-log" + Path.GetExtension(path);

    /// <summary>A mapper that keeps text as it is; the default one trims it and drops what is empty.</summary>
    private static BsonMapper OwnMapper() => new() { TrimWhitespace = false, EmptyStringToNull = false };
}
