namespace InspectLog.Journal.Tests.Support;

/// <summary>A folder of its own for one test.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("inspectlog-").FullName;

    public string At(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
