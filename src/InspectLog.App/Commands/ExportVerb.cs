using System.CommandLine;
using InspectLog.App.Archiving;
using InspectLog.App.Media;
using InspectLog.Archives.Making;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;
using InspectLog.Photos;

namespace InspectLog.App.Commands;

/// <summary>Makes the archive of a vehicle. Works while the garage is in use.</summary>
internal sealed class ExportVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string> _vehicle = new("--vehicle") { Description = "Id of the vehicle, as its address has it.", HelpName = "ID", Required = true };
    private readonly Option<string> _to = new("--to") { Description = "Folder the archive is put into; made when missing.", HelpName = "DIR", Required = true };
    private readonly Option<bool> _zip = new("--zip") { Description = "Make one ZIP file and not a folder." };

    private readonly Option<string?> _passphrase = PassphraseFile.Option("--passphrase-file", "A file whose first line is the passphrase the workshop's key is kept under.");
    private readonly Option<bool> _unsealed = new("--unsealed") { Description = "Leave the archive unsealed, though this workshop has a key." };

    private readonly Option<string> _profile = GivenOptions.Profile("What of it is given");

    public ExportVerb(Surroundings surroundings)
        : base(
            "export",
            "Make the archive of a vehicle: its journal, recordings, photos, check sheets, reports and readings, as a folder that anybody can check (BagIt). The garage may be in use.",
            surroundings)
    {
        _to.Validators.Add(given => PathGiven.RefuseEmpty(given, "--to needs the name of a folder."));
        Add(_data);
        Add(_vehicle);
        Add(_to);
        Add(_profile);
        Add(_zip);
        Add(_passphrase);
        Add(_unsealed);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog export --vehicle marigold --to /srv/archives",
        "inspectlog export --data /srv/garage --vehicle marigold --to /srv/archives --profile buyer --zip",
    ];

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var into = arguments.GetRequiredValue(_to);
        var photos = Surroundings.OpenPhotos();
        using var workers = photos as IDisposable;
        var maker = new ArchiveMaker(
            new ReportFiles(Path.Combine(AppContext.BaseDirectory, "wwwroot")), new CleanCopies(photos), BuiltInSheets.FileOf, Surroundings.Time);
        try
        {
            using var key = KeyOf(arguments);
            var archive = await maker.MakeAsync(
                GivenOptions.Reading(arguments.GetRequiredValue(_data), arguments.GetRequiredValue(_vehicle)),
                ArchiveProfiles.Find(arguments.GetRequiredValue(_profile))!,
                arguments.GetValue(_zip) ? (name, day) => new ZipTarget(into, name, day) : (name, _) => new FolderTarget(into, name),
                key is null ? null : new(new Sealer(Surroundings.Time, ProgramName.WithVersion), key),
                new BytesProgress(Surroundings.Error, Surroundings.Time),
                stop);
            Surroundings.Out.WriteLine(archive);
            Surroundings.Error.WriteLine(key is null
                ? "Not sealed."
                : $"Sealed with the key {KeyFingerprint.Printed(key.Public)}");
            return ExitCodes.Done;
        }
        catch (ArchiveRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
    }

    /// <summary>The workshop's key; null where it has none, or none is to be used.</summary>
    private SealKey? KeyOf(ParseResult arguments)
    {
        var keys = new SealKeyFile(arguments.GetRequiredValue(_data));
        if (arguments.GetValue(_unsealed) || !keys.Exists)
            return null;

        try
        {
            return keys.Read(PassphraseFile.Read(arguments.GetValue(_passphrase)));
        }
        catch (SealKeyException problem)
        {
            throw new CommandException(ExitCodes.BadInput, $"{problem.Message} ({(problem.IsPassphrase ? "--passphrase-file FILE, or " : "")}--unsealed to make the archive without a seal)", problem);
        }
    }
}
