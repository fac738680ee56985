using System.CommandLine;
using InspectLog.App.Backups;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Commands;

/// <summary>Backs a data folder up. Works while the garage is in use.</summary>
internal sealed class BackupVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string> _to = new("--to") { Description = "Folder of the backup: empty, not there yet, or with an earlier backup of this data folder, which is brought up to date.", HelpName = "DIR", Required = true };
    private readonly Option<bool> _withKeys = new("--with-keys") { Description = "Take the private keys of seals and certificates along. Whoever has the backup can then make seals in this workshop's name." };

    private readonly Option<bool> _all = new("--all") { Description = "Read all of the backup back, and not what is new and a tenth of the rest only." };

    public BackupVerb(Surroundings surroundings)
        : base(
            "backup",
            "Copy all that cannot be made again into another folder, and read back what was written. Only what is not there yet is copied, and of what is there a tenth is read, another one each time; broken off, it goes on the next time. The garage may be in use.",
            surroundings)
    {
        _to.Validators.Add(given => PathGiven.RefuseEmpty(given, "--to needs the name of a folder."));
        Add(_data);
        Add(_to);
        Add(_withKeys);
        Add(_all);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog backup --to /media/stick/garage",
        "inspectlog backup --data /srv/garage --to /media/stick/garage --with-keys",
        "inspectlog backup --to /media/stick/garage --all",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var (data, to) = (arguments.GetRequiredValue(_data), arguments.GetRequiredValue(_to));
        try
        {
            var outcome = new Backup(data, to, Surroundings.Time, ProgramName.WithVersion)
                .Run(arguments.GetValue(_withKeys), arguments.GetValue(_all), new BytesProgress(Surroundings.Error, Surroundings.Time), stop);
            Surroundings.Out.WriteLine($"Backed up: {BackupWords.Of(outcome)}");
            Surroundings.Out.WriteLine(BackupWords.ReadBack(outcome.ReadBack, outcome.Files));
            foreach (var line in outcome.Problems.Select(problem => $"NOT WHOLE: {problem}").Concat(outcome.Repaired).Append(BackupWords.Erased(outcome)).Append(BackupWords.Keys(outcome)).OfType<string>())
                Surroundings.Out.WriteLine(line);
            Note(data, outcome, to);
            return Task.FromResult(outcome.IsWhole ? ExitCodes.Done : ExitCodes.No);
        }
        catch (BackupRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
    }

    /// <summary>Notes it for the reminder in the garage. A data folder that cannot be written can be backed up all the same.</summary>
    private void Note(string data, BackupOutcome outcome, string to)
    {
        try
        {
            new BackupRecord(data).Completed(outcome, to);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Surroundings.Error.WriteLine($"The garage will not know of this backup: {problem.Message}");
        }
    }
}
