namespace InspectLog.Journal.Storage;

/// <summary>Where things are in a data folder.</summary>
/// <param name="Root">The folder.</param>
internal sealed record DataFolder(string Root)
{
    /// <summary>Name of a vehicle's journal within its folder.</summary>
    public const string JournalName = "journal.jsonl";

    /// <summary>Name of the folder of the vehicles' folders.</summary>
    public const string VehiclesName = "vehicles";

    /// <summary>What the names of vehicle folders begin with until they are whole.</summary>
    public const string InTheMaking = ".new-";

    /// <summary>The workshop's own journal.</summary>
    public string Workshop => Path.Combine(Root, "workshop.jsonl");

    /// <summary>One folder a vehicle.</summary>
    public string Vehicles => Path.Combine(Root, VehiclesName);

    /// <summary>Recordings and photos.</summary>
    public string Media => Path.Combine(Root, "media");

    /// <summary>The check sheets that inspections pin.</summary>
    public string Sheets => Path.Combine(Root, "sheets");

    /// <summary>Bytes of writes that never finished.</summary>
    public string SetAside => Path.Combine(Root, "set-aside");

    /// <summary>The index; can be deleted.</summary>
    public string Index => Path.Combine(Root, "index.db");

    /// <summary>Held open by the process that uses the folder.</summary>
    public string Lock => Path.Combine(Root, "inspectlog.lock");

    /// <summary>A vehicle's folder.</summary>
    public string Vehicle(string id) => Path.Combine(Vehicles, id);

    /// <summary>A vehicle's journal.</summary>
    public string Journal(string id) => Path.Combine(Vehicles, id, JournalName);

    /// <summary>Where a vehicle is made before it is given its place by one rename.</summary>
    public string VehicleInTheMaking(string id) => Path.Combine(Vehicles, InTheMaking + id);

    /// <summary>Makes the folder itself when it is missing, and those above it.</summary>
    public void CreateRoot(IDurable durable)
    {
        if (File.Exists(Root))
        {
            throw new IOException($"{Root} is a file, not a folder. Choose a folder for the journals.");
        }

        var missing = new List<string>();
        for (var folder = Root; !Directory.Exists(folder); folder = Path.GetDirectoryName(folder)!)
        {
            missing.Add(folder);
        }

        Directory.CreateDirectory(Root);
        missing.ForEach(folder => durable.SyncFolder(Path.GetDirectoryName(folder)!));
    }

    /// <summary>Makes the folders within it that are missing.</summary>
    public void CreateParts(IDurable durable)
    {
        foreach (var folder in new[] { Vehicles, Media, Sheets, SetAside })
        {
            Directory.CreateDirectory(folder);
        }

        durable.SyncFolder(Root);
    }

    /// <summary>Takes the folder for this process until the result is disposed or the process ends.</summary>
    /// <exception cref="DataFolderInUseException">Another process has it.</exception>
    public FileStream TakeLock()
    {
        try
        {
            return new FileStream(Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException cause) when (IsHeldByAnother(cause))
        {
            throw new DataFolderInUseException(
                $"The folder {Root} is open in another InspectLog. Close that one, or choose another folder.", cause);
        }
    }

    // EWOULDBLOCK of flock on Linux and macOS, ERROR_SHARING_VIOLATION on Windows
    internal static bool IsHeldByAnother(IOException cause) => cause.HResult is 11 or 35 or unchecked((int)0x80070020);
}
