using System.CommandLine;
using InspectLog.Checks;

namespace InspectLog.App.Commands;

/// <summary>The option that names a check sheet: a built-in one by its id, or one of anybody's own by its file.</summary>
internal static class SheetChoice
{
    // A sheet has some kilobytes; what is a thousand times as large is another file.
    private const long LargestFile = 16 * 1024 * 1024;

    public static Option<string> RequiredOption() => new("--sheet")
    {
        Description = Description,
        HelpName = Name,
        Required = true,
    };

    public static Option<string?> Option(string? description = null) => new("--sheet") { Description = description ?? Description, HelpName = Name };

    public static Option<int?> CylindersOption() => new("--cylinders")
    {
        Description = $"How many cylinders the engine has, {CheckSheet.UsualCylinders} where it is left out.",
        HelpName = "N",
    };

    /// <summary>What the built-in sheets are called on the command line.</summary>
    public static string Ids => string.Join(", ", BuiltInSheets.Ids);

    private static string Name => "ID|FILE";

    private static string Description => $"The check sheet the words belong to: {Ids}; or the file of another sheet.";

    /// <summary>The sheet, for the engine.</summary>
    /// <param name="named">Its id, or that of one it goes on from; or its file.</param>
    /// <param name="cylinders">How many cylinders the engine has; null stands for the usual number.</param>
    public static CheckSheet Find(string named, int? cylinders)
    {
        var sheet = BuiltInSheets.Find(named) ?? Read(named);
        var number = cylinders ?? sheet.Cylinders;
        return sheet.Fits(number)
            ? sheet.For(number)
            : throw CommandException.BadInput(
                $"The check sheet {sheet.Id} is not for {number} cylinders. Use --cylinders {ListedNumbers.OneOf(sheet.CylinderCounts)}.");
    }

    private static CheckSheet Read(string file)
    {
        if (!File.Exists(file))
        {
            throw CommandException.BadInput($"There is no check sheet \"{file}\". Use one of: {Ids}; or name the file of a sheet.");
        }

        try
        {
            return new FileInfo(file).Length <= LargestFile
                ? CheckSheetFile.Parse(File.ReadAllBytes(file))
                : throw CommandException.BadInput($"{file} is too large to be a check sheet.");
        }
        catch (CheckSheetFormatException e)
        {
            throw CommandException.BadInput($"{file} cannot be used as a check sheet. {e.Message}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw CommandException.BadInput($"{file} cannot be read: {e.Message}");
        }
    }
}
