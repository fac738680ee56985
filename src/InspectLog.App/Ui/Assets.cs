using System.Text.Json;

namespace InspectLog.App.Ui;

/// <summary>Addresses of the scripts and styles that browsers load: each bears in its name what is in the file, so that
/// it may be kept for good.</summary>
public sealed class Assets
{
    /// <summary>What all their addresses begin with.</summary>
    public const string Under = "/assets/";

    private const string List = "assets.json";

    private readonly Dictionary<string, string> _names;

    private Assets(Dictionary<string, string> names) => _names = names;

    /// <summary>Address of a file, by the name it has in the sources.</summary>
    /// <exception cref="KeyNotFoundException">There is no such file.</exception>
    public string this[string name] => Under + _names[name];

    /// <summary>All addresses.</summary>
    public IEnumerable<string> Addresses => _names.Values.Select(name => Under + name);

    /// <summary>Those the build made beside the program.</summary>
    /// <param name="webRoot">The folder that is served.</param>
    public static Assets In(string webRoot) => new(
        JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(Path.Combine(webRoot, Under.Trim('/'), List)))!);
}
