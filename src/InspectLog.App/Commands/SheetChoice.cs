using System.CommandLine;
using InspectLog.Checks;

namespace InspectLog.App.Commands;

/// <summary>The option that names a check sheet.</summary>
internal static class SheetChoice
{
    public static Option<string> RequiredOption() => new("--sheet")
    {
        Description = Description,
        HelpName = "ID",
        Required = true,
    };

    public static Option<string?> Option() => new("--sheet") { Description = Description, HelpName = "ID" };

    public static CheckSheet Find(string id) => BuiltInSheets.Find(id)
        ?? throw CommandException.BadInput($"There is no check sheet \"{id}\". Use one of: {Ids}.");

    private static string Description => $"The check sheet the words belong to: {Ids}.";

    private static string Ids => string.Join(", ", BuiltInSheets.All.Select(sheet => sheet.Id));
}
