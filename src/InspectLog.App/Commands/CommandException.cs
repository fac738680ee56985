namespace InspectLog.App.Commands;

/// <summary>Ends a verb with a sentence for the person who gave the command.</summary>
internal sealed class CommandException(int exitCode, string message, Exception? inner = null)
    : Exception(message, inner)
{
    public int ExitCode { get; } = exitCode;

    public static CommandException BadInput(string message) => new(ExitCodes.BadInput, message);
}
