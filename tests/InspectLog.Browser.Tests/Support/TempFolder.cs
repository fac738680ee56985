namespace InspectLog.Browser.Tests.Support;

/// <summary>A folder of its own that goes with the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("inspectlog-browser-").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
