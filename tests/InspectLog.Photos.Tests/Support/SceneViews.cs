using System.Text.Json;

namespace InspectLog.Photos.Tests.Support;

/// <summary>Pictures rendered of our own scenes (<c>Scenes</c>, with its README).</summary>
internal static class SceneViews
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Scenes");

    /// <summary>All of them, the first of each scene before its others.</summary>
    public static IReadOnlyList<SceneView> All { get; } =
        JsonSerializer.Deserialize<List<SceneView>>(System.IO.File.ReadAllText(Path.Combine(Folder, "views.json")), JsonSerializerOptions.Web)!;

    /// <summary>The file of a view.</summary>
    public static byte[] FileOf(SceneView view) => System.IO.File.ReadAllBytes(Path.Combine(Folder, view.File + ".jpg"));
}

/// <summary>A rendered picture and where its camera stood.</summary>
/// <param name="File">Name of the file without its end.</param>
/// <param name="Scene">The scene.</param>
/// <param name="Location">Where the camera is, centimetres.</param>
/// <param name="LookAt">What is in the middle.</param>
/// <param name="Sky">What is up.</param>
/// <param name="Angle">What is seen across, degrees.</param>
internal sealed record SceneView(string File, string Scene, double[] Location, double[] LookAt, double[] Sky, double Angle)
{
    /// <summary>Whether it is the first view of its scene.</summary>
    public bool IsFirst => File.EndsWith("-0", StringComparison.Ordinal);
}
