using System.CommandLine.Parsing;

namespace InspectLog.App.Commands;

/// <summary>Names of files and folders on the command line.</summary>
internal static class PathGiven
{
    /// <summary>An empty name is a mistake, such as a shell variable that was not set.</summary>
    public static void RefuseEmpty(SymbolResult given, string message)
    {
        if (given.Tokens.Any(token => string.IsNullOrWhiteSpace(token.Value)))
            given.AddError(message);
    }
}
