namespace InspectLog.Journal.Tests.Support;

/// <summary>Runs the tests, or the process that a crash test kills.</summary>
internal static class Program
{
    public static Task<int> Main(string[] args) => args switch
    {
        ["append-until-killed", var folder] => Task.FromResult(AppendUntilKilled.Run(folder)),
        ["append-once", var folder] => Task.FromResult(AppendOnce.Run(folder)),
        ["back-up-until-killed", var folder] => Task.FromResult(Backups.BackUpUntilKilled.Run(folder)),
        _ => Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args),
    };
}
