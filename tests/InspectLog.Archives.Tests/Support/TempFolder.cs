namespace InspectLog.Archives.Tests.Support;

/// <summary>A folder of its own for one test.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("inspectlog-").FullName;

    public string At(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    /// <summary>Writes a file, and the folders above it.</summary>
    public void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var place = At(path.Split('/'));
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(place)!);
        File.WriteAllBytes(place, bytes);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
