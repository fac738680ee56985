using System.CommandLine;
using InspectLog.App.Archiving;
using InspectLog.Archives.Checking;
using InspectLog.Archives.Importing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands;

/// <summary>Takes an archive into a data folder.</summary>
internal sealed class ImportVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder; made when missing.");
    private readonly Argument<string> _path = new("ARCHIVE") { Description = "An archive: its folder, or a ZIP of it." };

    public ImportVerb(Surroundings surroundings)
        : base(
            "import",
            "Take the archive of a vehicle into a data folder. All of it is checked first, and nothing is ever overwritten: a vehicle that is not there is added, a newer state of one that is there continues it.",
            surroundings)
    {
        _path.Validators.Add(given => PathGiven.RefuseEmpty(given, "ARCHIVE is empty: name the folder or ZIP of an archive."));
        Add(_path);
        Add(_data);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog import /srv/archives/marigold-2026-11-25.zip",
        "inspectlog import /srv/archives/marigold-2026-11-25 --data /srv/garage",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var path = arguments.GetRequiredValue(_path);
        if (!ArchiveFiles.IsThere(path))
            throw CommandException.BadInput($"There is no archive at {path}. Name its folder, or a ZIP of it.");

        using var tree = ArchiveFiles.Open(path);
        var archive = ArchiveFiles.Check.Check(tree, stop: stop);
        if (archive is not { IsIntact: true, Facts: { } facts })
        {
            Surroundings.Out.WriteArchive(path, archive.Faults, archive.Facts, key: null);
            Surroundings.Error.WriteLine("Nothing was taken in. Ask whoever made the archive to make it again, or copy it again if it was damaged on the way.");
            return Task.FromResult(ExitCodes.No);
        }

        using var garage = Garage.Open(
            arguments.GetRequiredValue(_data), Surroundings.Time, new OpeningProgress(Surroundings.Error, Surroundings.Time), wording: SheetWording.Of);
        return Task.FromResult(TakeIn(garage, tree, facts, stop));
    }

    private int TakeIn(Garage garage, Archives.BagIt.IFileTree tree, ArchiveFacts facts, CancellationToken stop)
    {
        try
        {
            var (_, done) = new ArchiveImport(garage, ArchiveFiles.FreeSpace).Run(tree, facts, stop);
            Surroundings.Out.WriteLine(ImportWords.Of(done, facts));
            foreach (var one in facts.Seals.Report.Seals.Where(one => one.Kept.Sound is not null))
                Surroundings.Out.WriteLine($"Seal of {SealWords.Line(one)}");
            foreach (var sentence in facts.Seals.Told())
                Surroundings.Out.WriteLine(sentence);
            return ExitCodes.Done;
        }
        catch (ImportRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
    }
}
