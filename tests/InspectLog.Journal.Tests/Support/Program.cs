using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Tests.Support;

/// <summary>Runs the tests, or the process that a crash test kills.</summary>
internal static class Program
{
    public static Task<int> Main(string[] args) => args switch
    {
        ["append-until-killed", var folder] => Task.FromResult(AppendUntilKilled.Run(folder)),
        ["append-once", var folder] => Task.FromResult(AppendOnce.Run(folder)),
        ["one-inspection", var folder] => Task.FromResult(OneInspection.Run(folder, new Durable())),
        ["one-inspection-stepped", var folder] => Task.FromResult(OneInspection.Run(folder, Stepped(syncs: true))),
        ["one-inspection-unsynced", var folder] => Task.FromResult(OneInspection.Run(folder, Stepped(syncs: false))),
        ["back-up-until-killed", var folder] => Task.FromResult(Backups.BackUpUntilKilled.Run(folder)),
        ["erase-until-killed", var folder] => Task.FromResult(Erasing.KillingDisk.Run(folder)),
        _ => Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args),
    };

    private static SteppedDisk Stepped(bool syncs) => new(Console.In, Console.Out, syncs);
}
