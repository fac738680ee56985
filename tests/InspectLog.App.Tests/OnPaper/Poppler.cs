using System.Diagnostics;
using System.Text.RegularExpressions;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>Reads PDF files with the tools of poppler, which know nothing of the library they were written with.</summary>
internal static partial class Poppler
{
    /// <summary>What <c>pdfinfo</c> says of a file, by name.</summary>
    public static IReadOnlyDictionary<string, string> Info(string file) => Run("pdfinfo", file)
        .Split('\n', StringSplitOptions.RemoveEmptyEntries)
        .Select(line => line.Split(':', 2))
        .ToDictionary(parts => parts[0], parts => parts[1].Trim());

    /// <summary>All that is shown, page by page.</summary>
    public static string Text(string file) => Run("pdftotext", "-layout", file, "-");

    /// <summary>What is told to those who listen, in the order of telling: the types of its structure and the texts.</summary>
    public static IReadOnlyList<Told> Told(string file) =>
    [
        .. Run("pdfinfo", "-struct-text", file).Split('\n')
            .Select(line => line.Trim())
            .Select(line => line is ['"', .. var text, '"'] ? new Told("", text) : Type().Match(line) is { Success: true } type ? new Told(type.Groups[1].Value, "") : null)
            .OfType<Told>(),
    ];

    /// <summary>Name, and whether it is embedded, a subset and says its letters, of each font.</summary>
    public static IReadOnlyList<(string Name, bool IsWhole)> Fonts(string file) =>
    [
        .. Run("pdffonts", file).Split('\n').Skip(2).Where(line => line.Length > 0).Select(line => (line, YesYesYes().IsMatch(line))),
    ];

    /// <summary>A page as a PNG file.</summary>
    public static string Page(string file, int page, int resolution)
    {
        var to = $"{file}-{page}";
        Run("pdftoppm", "-png", "-singlefile", "-r", $"{resolution}", "-f", $"{page}", "-l", $"{page}", file, to);
        return to + ".png";
    }

    /// <summary>A text without white space, which paper puts elsewhere.</summary>
    public static string Tight(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    private static string Run(string tool, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var problems = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal((0, ""), (process.ExitCode, problems.Result));
        return output;
    }

    [GeneratedRegex(@"^([A-Z][A-Za-z0-9]*)(?: \((?:block|inline)\))?:?$")]
    private static partial Regex Type();

    [GeneratedRegex(@" yes yes yes +\d+ +0$")]
    private static partial Regex YesYesYes();
}

/// <summary>A part of what is told: a type of the structure, or a text.</summary>
internal sealed record Told(string Type, string Text);
