using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Inspecting;
using InspectLog.Journal.Verification;
using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>The option that names the data folder whose own words are understood as well.</summary>
internal static class OwnWordsChoice
{
    public static Option<string?> Option()
    {
        var option = new Option<string?>("--data")
        {
            Description = "A data folder whose own words are understood as well; it is only read, and may be in use. Without it: the sheet's words only.",
            HelpName = "FOLDER",
        };
        option.Validators.Add(given => PathGiven.RefuseEmpty(given, "--data needs the name of a folder."));
        return option;
    }

    /// <summary>A reader for a sheet that knows the words of a data folder; only the sheet's where none is named.</summary>
    public static FindingReader Reader(CheckSheet sheet, string? folder) =>
        new(sheet, folder is null ? [] : WordsOf(folder, sheet));

    private static IReadOnlyList<OwnWord> WordsOf(string folder, CheckSheet sheet)
    {
        var workshop = Read(folder);

        // What was never written whole was never acknowledged. Damage is another thing: words would be missing unsaid.
        return workshop.Broken is { IsUnfinished: false } broken
            ? throw CommandException.BadInput(
                $"The own words in {folder} cannot be relied on: line {broken.Line} of the workshop's journal is damaged ({broken.Reason}). "
                + "Put the file back from a copy, or leave --data out.")
            : WorkshopWords.For(workshop.State, sheet);
    }

    private static WorkshopReading Read(string folder)
    {
        try
        {
            return WorkshopReading.Of(folder);
        }
        catch (DirectoryNotFoundException e)
        {
            throw CommandException.BadInput($"{e.Message} Name the data folder with --data FOLDER.");
        }
    }
}
