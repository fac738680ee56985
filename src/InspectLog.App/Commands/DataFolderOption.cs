using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>The option that names the data folder.</summary>
internal static class DataFolderOption
{
    public static Option<string> Of(string description)
    {
        var option = new Option<string>("--data")
        {
            Description = $"{description} Without it: inspectlog in the user's own data folder.",
            HelpName = "FOLDER",
            DefaultValueFactory = _ => Usual(),
        };
        option.Validators.Add(given => PathGiven.RefuseEmpty(given, "--data needs the name of a folder."));
        return option;
    }

    private static string Usual()
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return own.Length > 0
            ? Path.Combine(own, "inspectlog")
            : throw CommandException.BadInput("This user has no data folder. Name one with --data FOLDER.");
    }
}
