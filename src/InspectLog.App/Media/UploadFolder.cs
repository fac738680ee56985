namespace InspectLog.App.Media;

/// <summary>Where photos and recordings lie while they come in, before they are kept: in the data folder, so that they are
/// as private as it, and so that what a crash leaves of them is found.</summary>
public static class UploadFolder
{
    /// <summary>The folder in a data folder, without what an earlier run left in it: none of that was acknowledged. Call it
    /// while the data folder is held, as another run's uploads would go.</summary>
    /// <exception cref="IOException">It cannot be made or emptied.</exception>
    public static string SweptIn(string dataFolder)
    {
        var folder = Directory.CreateDirectory(Path.Combine(dataFolder, "uploads"));
        foreach (var left in folder.EnumerateFiles())
        {
            left.Delete();
        }

        return folder.FullName;
    }
}
