using System.CommandLine;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands;

/// <summary>Seals a vehicle's journal, or keeps a time stamp beside a seal. The program may be running meanwhile: nothing is
/// written to the journal.</summary>
internal sealed class SealVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string> _vehicle = new("--vehicle") { Description = "The vehicle: the name of its folder.", HelpName = "ID", Required = true };
    private readonly Option<string?> _passphrase = PassphraseFile.Option("--passphrase-file", "A file whose first line is the passphrase the key is kept under, or is to be kept under when this makes it.");
    private readonly Option<string?> _copy = new("--copy") { Description = "Also write the seal to this file, to be kept elsewhere or given to somebody.", HelpName = "FILE" };
    private readonly Option<string?> _stamp = new("--stamp") { Description = "Make no seal: keep this time stamp (RFC 3161, an issuer's answer or token) beside the seal it is of.", HelpName = "FILE" };

    public SealVerb(Surroundings surroundings)
        : base("seal", "Seal a vehicle's journal as it is now: sign what it holds and what of it is withheld. The first seal makes the key.", surroundings)
    {
        Add(_data);
        Add(_vehicle);
        Add(_passphrase);
        Add(_copy);
        Add(_stamp);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog seal --data /srv/garage --vehicle marigold",
        "inspectlog seal --data /srv/garage --vehicle marigold --copy /media/stick/marigold.jws",
        "inspectlog seal --data /srv/garage --vehicle marigold --stamp answer.tsr",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var (data, vehicle) = (arguments.GetRequiredValue(_data), arguments.GetRequiredValue(_vehicle));
        try
        {
            var folder = SealFolder.Of(data, vehicle);
            if (arguments.GetValue(_stamp) is { } stamp)
                Attach(folder, stamp);
            else
                Seal(folder, data, vehicle, PassphraseFile.Read(arguments.GetValue(_passphrase)), arguments.GetValue(_copy));
            return Task.FromResult(ExitCodes.Done);
        }
        catch (UnknownVehicleException)
        {
            throw CommandException.BadInput($"There is no vehicle {vehicle} in {data}.");
        }
        catch (SealRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
        catch (SealKeyException problem)
        {
            throw new CommandException(ExitCodes.BadInput, problem.IsPassphrase ? $"{problem.Message} (--passphrase-file FILE)" : problem.Message, problem);
        }
    }

    private void Seal(SealFolder folder, string data, string vehicle, string? passphrase, string? copy)
    {
        var chain = JournalChain.Read(data, vehicle);
        var keys = new SealKeyFile(data);
        var isFirst = !keys.Exists;
        using var key = keys.ReadOrMake(passphrase);
        var signed = new Sealer(Surroundings.Time, ProgramName.WithVersion).Seal(folder, vehicle, chain, key);
        if (copy is not null)
            File.WriteAllText(copy, signed.Compact);
        Surroundings.Out.WriteLine($"Sealed: {vehicle}, {signed.Seal.Count} {(signed.Seal.Count == 1 ? "entry" : "entries")}, {SealWords.Moment(signed.Seal)}");
        Surroundings.Out.WriteLine($"Record: {signed.Seal.Record}");
        Surroundings.Out.WriteLine($"Key: {KeyFingerprint.Printed(key.Public)}");
        Surroundings.Out.WriteLine($"File: {signed.FileName}");
        if (isFirst)
            Surroundings.Error.WriteLine($"A key was made: {keys.Path}. Print its recovery sheet and put it away: inspectlog seal-key sheet");
    }

    private void Attach(SealFolder folder, string file)
    {
        var bytes = File.Exists(file) ? File.ReadAllBytes(file) : throw CommandException.BadInput($"There is no file {file}.");
        var problem = "there is no seal";
        foreach (var kept in folder.Read().Reverse().Where(kept => kept.Sound is not null))
        {
            try
            {
                var stamp = SealStamp.Read(bytes, kept.Sound!);
                folder.Attach(kept.Name, stamp);
                Surroundings.Out.WriteLine(SealWords.Line(new(kept with { Stamp = stamp }, new(SealStanding.Current, 0, 0, [], []))));
                return;
            }
            catch (FormatException refused)
            {
                problem = refused.Message;
            }
        }

        throw CommandException.BadInput($"{file} is the time stamp of no seal of this vehicle: {problem}.");
    }
}
