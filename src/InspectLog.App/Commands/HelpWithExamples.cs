using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace InspectLog.App.Commands;

/// <summary>The usual help, with examples and exit codes after it.</summary>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        if (parseResult.CommandResult.Command is Verb verb)
        {
            output.WriteLine("Examples:");
            foreach (var example in verb.Examples)
                output.WriteLine($"  {example}");
            output.WriteLine();
        }

        output.WriteLine("Exit codes:");
        foreach (var (code, meaning) in ExitCodes.All)
            output.WriteLine($"  {code}  {meaning}");
        return ExitCodes.Done;
    }
}
