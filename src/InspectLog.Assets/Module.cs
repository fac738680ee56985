using System.Text;
using System.Text.RegularExpressions;

namespace InspectLog.Assets;

/// <summary>A script read for bundling.</summary>
/// <param name="Name">Its file name.</param>
/// <param name="Imports">File names of what it imports, in its order.</param>
/// <param name="Exports">Names of what it exports.</param>
/// <param name="Code">What it does, without comments on lines of their own and without indentation.</param>
internal sealed partial record Module(string Name, IReadOnlyList<string> Imports, IReadOnlyList<string> Exports, string Code)
{
    /// <summary>What holds its exports.</summary>
    public string Variable => VariableOf(Name);

    /// <summary>Reads a script.</summary>
    /// <exception cref="InvalidDataException">It says something that is not understood.</exception>
    public static Module Read(string name, string text)
    {
        var (imports, exports, code) = (new List<string>(), new List<string>(), new StringBuilder());
        foreach (var line in SmallLines(name, text))
        {
            if (Import().Match(line) is { Success: true } import)
            {
                imports.Add(import.Groups["file"].Value);
                if (import.Groups["names"] is { Success: true } names)
                {
                    code.Append("const {").Append(names.Value.Replace(" as ", ": ", StringComparison.Ordinal)).Append("} = ").Append(VariableOf(imports[^1])).Append(";\n");
                }
            }
            else if (Export().Match(line) is { Success: true } export)
            {
                exports.Add(export.Groups["name"].Value);
                code.Append(line["export ".Length..]).Append('\n');
            }
            else if (Other().IsMatch(line))
            {
                throw new InvalidDataException($"{name}: this way to import or export is not understood: {line}");
            }
            else
            {
                code.Append(line).Append('\n');
            }
        }

        return new(name, imports, exports, LineEnds().Replace(code.ToString(), "$1"));
    }

    /// <summary>Run once: held under its name where others can import from it.</summary>
    public string AsFunction() => Exports.Count == 0
        ? $"(() => {{\n{Code}}})();\n"
        : $"const {Variable} = (() => {{\n{Code}return {{{string.Join(",", Exports)}}}}})();\n";

    private static string VariableOf(string name) => "$" + NoLetter().Replace(Path.GetFileNameWithoutExtension(name), "_");

    /// <summary>Its lines without indentation and comments; the lines of a text over several lines as they are.</summary>
    private static List<string> SmallLines(string name, string text)
    {
        var lines = new List<string>();
        var (inComment, inText) = (false, false);
        foreach (var line in text.Split('\n').Select(line => line.TrimEnd('\r')))
        {
            var small = inText ? line : line.Trim();
            var startsComment = !inText && small.StartsWith("/*", StringComparison.Ordinal);
            if (inComment || startsComment)
            {
                inComment = !small.EndsWith("*/", StringComparison.Ordinal);
            }
            else if (inText || (small.Length > 0 && !small.StartsWith("//", StringComparison.Ordinal)))
            {
                lines.Add(inText ? small : CommentAtEnd().Replace(small, "$1"));
                inText ^= small.Count(letter => letter == '`') % 2 == 1;
            }
        }

        return inComment || inText ? throw new InvalidDataException($"{name}: a comment or a text does not end.") : lines;
    }

    [GeneratedRegex("""^import (?:\{(?<names>[^}]+)\} from )?"\./(?<file>[a-z-]+\.js)";$""")]
    private static partial Regex Import();

    [GeneratedRegex(@"^export (?:async )?(?:function|class|const) (?<name>\w+)")]
    private static partial Regex Export();

    [GeneratedRegex(@"^(?:import\b(?!\()|export\b)|\bimport\.meta\b")]
    private static partial Regex Other();

    // Where a statement, a block or a list goes on, the line need not end. (Texts over several lines have no such ends.)
    [GeneratedRegex(@"([;{},])\n(?!`)")]
    private static partial Regex LineEnds();

    // Only where no quote follows, so that it cannot be part of a text.
    [GeneratedRegex(@"([;{},)])\s+// [^`'""]*$")]
    private static partial Regex CommentAtEnd();

    [GeneratedRegex("[^A-Za-z0-9]")]
    private static partial Regex NoLetter();
}
