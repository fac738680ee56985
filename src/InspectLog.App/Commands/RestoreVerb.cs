using System.CommandLine;
using InspectLog.App.Backups;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Commands;

/// <summary>Makes a data folder of a backup.</summary>
internal sealed class RestoreVerb : Verb
{
    private readonly Option<string> _from = new("--from") { Description = "Folder of the backup. Nothing in it is changed.", HelpName = "DIR", Required = true };
    private readonly Option<string> _data = DataFolderOption.Of("The data folder to be: empty, or not there yet.");

    public RestoreVerb(Surroundings surroundings)
        : base("restore", "Put a backup back into a folder that is empty or not there yet, and read back what was written. Broken off, it goes on the next time.", surroundings)
    {
        _from.Validators.Add(given => PathGiven.RefuseEmpty(given, "--from needs the name of a folder."));
        Add(_from);
        Add(_data);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog restore --from /media/stick/garage",
        "inspectlog restore --from /media/stick/garage --data /srv/garage",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var data = arguments.GetRequiredValue(_data);
        try
        {
            var (backup, problems) = new Restore(arguments.GetRequiredValue(_from), data)
                .Run(new BytesProgress(Surroundings.Error, Surroundings.Time), stop);
            Surroundings.Out.WriteLine($"Restored: {BackupWords.Files(backup.Files.Count)}, as they were on {BackupWords.Moment(backup.Time)}");
            foreach (var problem in problems)
                Surroundings.Out.WriteLine($"NOT WHOLE: {problem}");
            if (!backup.HasKeys)
                Surroundings.Out.WriteLine("There were no private keys in the backup: bring the key of the seals back from its recovery sheet (inspectlog seal-key restore), and let phones visit the certificate page again.");
            Surroundings.Out.WriteLine($"See whether all of it is sound: inspectlog verify {data}");
            return Task.FromResult(problems.Count == 0 ? ExitCodes.Done : ExitCodes.No);
        }
        catch (BackupRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
    }
}
