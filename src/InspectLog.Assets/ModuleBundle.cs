using System.Text;

namespace InspectLog.Assets;

/// <summary>One module out of one and all it imports, directly or not: each as a function of its own that is run once, those
/// it imports before it, as a browser would. It understands what the scripts of this project are written in (named imports
/// on one line, exports where things are declared) and refuses the rest.</summary>
internal static class ModuleBundle
{
    /// <param name="texts">The modules by file name.</param>
    /// <param name="entry">Name of the module to begin with.</param>
    /// <exception cref="InvalidDataException">A module is missing, imports in a circle, or says what is not
    /// understood.</exception>
    public static string Of(IReadOnlyDictionary<string, string> texts, string entry)
    {
        var ordered = new List<Module>();
        Add(entry, texts, ordered, []);
        var all = new StringBuilder();
        foreach (var module in ordered)
        {
            all.Append(module.AsFunction());
        }

        // For whoever looks into the running page: tests, and the browser's console.
        return all.Append("export { ").AppendJoin(", ", ordered.Where(one => one.Exports.Count > 0).Select(one => one.Variable)).Append(" };\n").ToString();
    }

    private static void Add(string name, IReadOnlyDictionary<string, string> texts, List<Module> ordered, IReadOnlyList<string> importers)
    {
        if (importers.Contains(name))
        {
            throw new InvalidDataException($"These modules import each other in a circle: {string.Join(", ", [.. importers, name])}.");
        }

        if (ordered.Any(module => module.Name == name))
        {
            return;
        }

        var module = Module.Read(name, texts.TryGetValue(name, out var text)
            ? text
            : throw new InvalidDataException($"{(importers.Count > 0 ? importers[^1] : "The build")} imports {name}, which is not there."));
        foreach (var imported in module.Imports)
        {
            Add(imported, texts, ordered, [.. importers, name]);
        }

        ordered.Add(module);
    }
}
