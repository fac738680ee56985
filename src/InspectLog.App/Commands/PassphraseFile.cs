using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>A passphrase in a file: on a command line everybody on the computer could read it.</summary>
internal static class PassphraseFile
{
    public static Option<string?> Option(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "FILE" };
        option.Validators.Add(given => PathGiven.RefuseEmpty(given, $"{name} needs the name of a file."));
        return option;
    }

    /// <summary>The first line of a file; null where none was named.</summary>
    public static string? Read(string? path)
    {
        if (path is null)
            return null;

        var line = File.Exists(path) ? File.ReadLines(path).FirstOrDefault() : throw CommandException.BadInput($"There is no file {path}.");
        return string.IsNullOrWhiteSpace(line) ? throw CommandException.BadInput($"The first line of {path} is empty: write the passphrase there.") : line.Trim();
    }
}
