namespace InspectLog.Photos.Tests.Support;

/// <summary>Small files in Files/ made by other programs; its README says how.</summary>
internal static class SampleFiles
{
    public static byte[] Read(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Files", name));
}
