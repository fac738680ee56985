using System.Text;
using System.Text.RegularExpressions;

namespace InspectLog.Assets;

/// <summary>One stylesheet out of one that imports others: those in its place, in its order, without comments.</summary>
internal static partial class StyleBundle
{
    /// <param name="folder">Where the stylesheets are.</param>
    /// <param name="entry">The one that imports the others, and says nothing else.</param>
    /// <exception cref="InvalidDataException">It says something else, or a stylesheet of the folder is not in it.</exception>
    public static string Of(string folder, string entry)
    {
        var imported = Imported(File.ReadAllText(Path.Combine(folder, entry)), entry);
        var forgotten = Directory.GetFiles(folder, "*.css").Select(file => Path.GetFileName(file)).Except([entry, .. imported]).ToList();
        if (forgotten.Count > 0)
        {
            throw new InvalidDataException($"{entry} does not import {string.Join(", ", forgotten)}.");
        }

        var all = new StringBuilder();
        foreach (var name in imported)
        {
            all.Append(Small(File.ReadAllText(Path.Combine(folder, name))));
        }

        return all.ToString();
    }

    /// <summary>A stylesheet by itself, without comments.</summary>
    public static string One(string file) => Small(File.ReadAllText(file));

    private static List<string> Imported(string text, string entry)
    {
        var imported = new List<string>();
        foreach (var line in Comment().Replace(text, "").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            imported.Add(Import().Match(line) is { Success: true } import
                ? import.Groups[1].Value
                : throw new InvalidDataException($"{entry} may only import: {line}"));
        }

        return imported;
    }

    /// <summary>Without comments and without the spaces that mean nothing. (One after a colon parts a property from its
    /// value; one before it is a selector's and stays.)</summary>
    private static string Small(string text) =>
        AfterColon().Replace(AroundSigns().Replace(Comment().Replace(text, ""), "$1"), ":").Replace(";}", "}", StringComparison.Ordinal).Trim() + "\n";

    [GeneratedRegex("""^@import url\("([a-z-]+\.css)"\);$""")]
    private static partial Regex Import();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\s*([{};,])\s*")]
    private static partial Regex AroundSigns();

    [GeneratedRegex(@":\s+")]
    private static partial Regex AfterColon();
}
