using System.CommandLine;
using System.CommandLine.Help;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Commands;

/// <summary>The command line: its verbs, and how their failures are told.</summary>
internal static class CommandLine
{
    private static readonly ParserConfiguration Parsing = new()
    {
        // A text to be understood may begin with "@", and no option here has a one-letter form to bundle.
        ResponseFileTokenReplacer = null,
        EnablePosixBundling = false,
    };

    public static RootCommand Root(Surroundings surroundings)
    {
        var root = new RootCommand("InspectLog keeps the inspection journal of an older car.")
        {
            new DecideVerb(surroundings),
            new RouteVerb(surroundings),
            new TrendVerb(surroundings),
            new ReferVerb(surroundings),
            new UnderstandVerb(surroundings),
            new TranscribeVerb(surroundings),
            new ReportVerb(surroundings),
            new ExportVerb(surroundings),
            new ImportVerb(surroundings),
            new VerifyVerb(surroundings),
            new BackupVerb(surroundings),
            new RestoreVerb(surroundings),
            new EraseVerb(surroundings),
            new SealVerb(surroundings),
            new SealKeyVerb(surroundings),
            new RebuildVerb(surroundings),
            new ServeVerb(surroundings),
            new DemoVerb(surroundings),
            new SpeechWorkerVerb(surroundings),
            new PhotoWorkerVerb(surroundings),
        };
        foreach (var help in root.Options.OfType<HelpOption>())
            help.Action = new HelpWithExamples((HelpAction)help.Action!);
        return root;
    }

    /// <summary>Runs one command line. Ctrl+C and termination signals stop it, as does the token.</summary>
    public static async Task<int> RunAsync(
        IReadOnlyList<string> arguments, Surroundings surroundings, CancellationToken stop = default)
    {
        var parsed = Root(surroundings).Parse(arguments is [] ? ["--help"] : arguments, Parsing);
        if (parsed.Errors is [var first, ..])
        {
            var verb = parsed.CommandResult.Command is Verb command ? $"inspectlog {command.Name}" : "inspectlog";
            var problem = parsed.UnmatchedTokens is [var token, ..] ? $"\"{token}\" is not known here." : first.Message;
            await surroundings.Error.WriteLineAsync($"{problem} See \"{verb} --help\".");
            return ExitCodes.BadInput;
        }

        try
        {
            var invocation = new InvocationConfiguration
            {
                Output = surroundings.Out,
                Error = surroundings.Error,
                EnableDefaultExceptionHandler = false,
            };
            if (parsed.CommandResult.Command is Verb verb)
                invocation.ProcessTerminationTimeout = verb.TimeToStop;
            return await parsed.InvokeAsync(invocation, stop);
        }
        catch (Exception e) when (ExitCodeFor(e) is { } code)
        {
            await surroundings.Error.WriteLineAsync(e.Message);
            return code;
        }
        catch (OperationCanceledException)
        {
            return ExitCodes.Stopped;
        }
    }

    /// <summary>The exit code of a failure whose message is written for people; null for a fault of ours, which
    /// ends the program with its stack trace.</summary>
    private static int? ExitCodeFor(Exception e) => e switch
    {
        CommandException command => command.ExitCode,
        SpeechUnavailableException => ExitCodes.Cannot,
        IOException or UnauthorizedAccessException => ExitCodes.Cannot,
        _ => null,
    };
}
