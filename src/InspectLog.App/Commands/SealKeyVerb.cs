using System.CommandLine;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands;

/// <summary>The key of a workshop's seals: its fingerprint, its recovery sheet, its passphrase.</summary>
internal sealed class SealKeyVerb : Verb
{
    private const string Show = "show";
    private const string Sheet = "sheet";
    private const string Restore = "restore";
    private const string Protect = "protect";

    private readonly Argument<string> _action = new("ACTION")
    {
        Description = "show its fingerprint; print its recovery sheet; restore it from a sheet typed into standard input; or protect it with another passphrase, or with none where no new one is named.",
    };

    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string?> _passphrase = PassphraseFile.Option("--passphrase-file", "A file whose first line is the passphrase the key is kept under.");
    private readonly Option<string?> _new = PassphraseFile.Option("--new-passphrase-file", "A file whose first line is the passphrase the key is to be kept under.");

    public SealKeyVerb(Surroundings surroundings)
        : base("seal-key", "The key that seals are made with. Whoever has it can make seals in this workshop's name.", surroundings)
    {
        _action.AcceptOnlyFromAmong(Show, Sheet, Restore, Protect);
        Add(_action);
        Add(_data);
        Add(_passphrase);
        Add(_new);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog seal-key show --data /srv/garage",
        "inspectlog seal-key sheet --data /srv/garage",
        "inspectlog seal-key restore --data /srv/garage < sheet.txt",
        "inspectlog seal-key protect --data /srv/garage --new-passphrase-file new.txt",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var data = arguments.GetRequiredValue(_data);
        if (!Directory.Exists(data))
            throw CommandException.BadInput($"There is no folder {data}. Name the data folder with --data FOLDER.");

        try
        {
            Do(arguments.GetRequiredValue(_action), new SealKeyFile(data), PassphraseFile.Read(arguments.GetValue(_passphrase)), PassphraseFile.Read(arguments.GetValue(_new)));
            return Task.FromResult(ExitCodes.Done);
        }
        catch (SealKeyException problem)
        {
            throw new CommandException(ExitCodes.BadInput, problem.IsPassphrase ? $"{problem.Message} (--passphrase-file FILE)" : problem.Message, problem);
        }
    }

    private void Do(string action, SealKeyFile keys, string? passphrase, string? next)
    {
        using var key = action == Restore ? RecoverySheet.Read(Surroundings.In.ReadToEnd()) : keys.Read(passphrase);
        switch (action)
        {
            case Sheet:
                Print(key);
                break;
            case Restore:
                keys.Keep(key, next);
                break;
            case Protect:
                keys.Change(key, next);
                break;
        }

        if (action != Sheet)
            Surroundings.Out.WriteLine($"Key: {KeyFingerprint.Printed(key.Public)}{(keys.IsProtected ? ", kept under a passphrase" : "")}");
    }

    private void Print(SealKey key)
    {
        Surroundings.Out.WriteLine($"Recovery sheet of the key {KeyFingerprint.Printed(key.Public)}");
        Surroundings.Out.WriteLine("Whoever has this sheet can make seals in this workshop's name. Print it, and put it where you keep papers that matter.");
        Surroundings.Out.WriteLine();
        foreach (var (at, line) in RecoverySheet.Write(key).Index())
            Surroundings.Out.WriteLine($"  {at + 1})  {line}");
        Surroundings.Out.WriteLine();
        Surroundings.Out.WriteLine("To restore the key, type the digits of all lines, without the numbers before them: inspectlog seal-key restore");
    }
}
