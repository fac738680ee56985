using System.CommandLine;
using InspectLog.App.Archiving;
using InspectLog.App.Media;
using InspectLog.App.Reports;
using InspectLog.App.Reports.Files;
using InspectLog.App.Reports.Printing;
using InspectLog.App.Seals;
using InspectLog.Archives.Making;
using InspectLog.Inspecting;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.State;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>Writes the report of an inspection as a file. Works while the garage is in use, and writes nothing into it.</summary>
internal sealed class ReportVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string> _vehicle = new("--vehicle") { Description = "Id of the vehicle, as its address has it.", HelpName = "ID", Required = true };
    private readonly Option<long?> _inspection = new("--inspection") { Description = "Number of the inspection, as its address has it. Without it the last one that is closed, or the last one where none is.", HelpName = "NUMBER" };
    private readonly Option<string> _profile = GivenOptions.Profile("What of it is told");
    private readonly Option<string> _to = new("--to") { Description = "File the report is written to. It ends in .pdf or .html, and must not be there yet.", HelpName = "FILE", Required = true };

    public ReportVerb(Surroundings surroundings)
        : base("report", "Write the report of an inspection as a PDF file, or as one HTML file with its pictures in it. The garage may be in use.", surroundings)
    {
        _to.Validators.Add(given => PathGiven.RefuseEmpty(given, "--to needs the name of a file."));
        Add(_data);
        Add(_vehicle);
        Add(_inspection);
        Add(_profile);
        Add(_to);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog report --vehicle marigold --to marigold.pdf",
        "inspectlog report --data /srv/garage --vehicle marigold --inspection 2 --profile buyer --to for-the-buyer.html",
    ];

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var to = arguments.GetRequiredValue(_to);
        var isPdf = IsPdf(to);
        var source = GivenOptions.Reading(arguments.GetRequiredValue(_data), arguments.GetRequiredValue(_vehicle));
        var photos = Surroundings.OpenPhotos();
        using var workers = photos as IDisposable;
        using var given = Given(source, ArchiveProfiles.Find(arguments.GetRequiredValue(_profile))!, new CleanCopies(photos));
        var view = ViewOf(given.Record, arguments.GetValue(_inspection), arguments.GetRequiredValue(_profile) == ArchiveProfiles.Everything.Id);
        var pictures = new KeptOrMade(CopyFiles.In(source.DataFolder), source, given.Record);
        var progress = new ReportProgressText(Surroundings.Error, Surroundings.Time);
        await using (var file = NewFile(to))
        {
            await WriteAsync(file, to, async () =>
            {
                if (isPdf)
                {
                    var prints = new SmallPrints(photos);
                    await file.WriteAsync(await ReportPaper.WriteAsync(
                        view,
                        async (sha256, cancel) => await pictures.OfAsync(sha256, cancel) is { } copy ? await prints.OfAsync(copy, cancel) : null,
                        Surroundings.Time.GetUtcNow(),
                        progress,
                        stop), stop);
                }
                else
                {
                    await ReportHtml.WriteAsync(
                        view with { Style = ReportHtml.StyleIn(Path.Combine(AppContext.BaseDirectory, "wwwroot")) }, pictures.OfAsync, file, progress, stop);
                }
            });
        }

        Surroundings.Out.WriteLine(Path.GetFullPath(to));
        return ExitCodes.Done;
    }

    private static bool IsPdf(string to) => Path.GetExtension(to).ToLowerInvariant() switch
    {
        ".pdf" => true,
        ".html" or ".htm" => false,
        _ => throw CommandException.BadInput($"Say by its name what the report is to be: a file that ends in .pdf or in .html. {to} ends in neither."),
    };

    private static GivenRecord Given(VehicleReading source, ArchiveProfile profile, CleanCopies copies)
    {
        if (source.Broken is { } broken)
            throw new CommandException(ExitCodes.No, $"The journal of {source.Id} is damaged at line {broken.Line}: {broken.Reason}. A report of it would lack what stands there. Put the journal back from a copy, and try again; its page shows what can still be read.");
        if (source.Entries.IsEmpty)
            throw new CommandException(ExitCodes.No, $"The journal of {source.Id} holds no entry, so there is nothing to report.");
        return new(source, profile, copies);
    }

    private static ReportFileView ViewOf(ReadableRecord record, long? number, bool isWhole)
    {
        var inspection = InspectionOf(record.Vehicle, number);
        var scene = BenchScene.Of(record.Vehicle, new SheetLibrary(record.Source.Sheets), inspection.Number)
            ?? throw new CommandException(ExitCodes.No, $"The check sheet {inspection.How.Sheet} that inspection {inspection.Number} was made with is not there. Put its file {inspection.How.SheetSha256}.json back into the folder {record.Source.Sheets.Folder} from a copy, and try again.");
        var view = ReportFileView.Of(scene, WorkshopReading.Of(record.Source.DataFolder).State, record.Withheld);

        // A seal is of the whole record: what is withheld by a profile was not withheld from it.
        return isWhole
            ? view with { Report = view.Report with { Sealed = SealedState.Of(record.Source.DataFolder, record.Vehicle.Id, JournalChain.Of(record.Vehicle, record.Entries)) } }
            : view;
    }

    private static InspectionState InspectionOf(VehicleState vehicle, long? number)
    {
        var known = vehicle.Inspections;
        if (known.Count == 0)
            throw new CommandException(ExitCodes.No, $"{vehicle.Name} was never inspected here, so there is nothing to report.");
        return number is { } asked
            ? vehicle.Inspection(asked) ?? throw CommandException.BadInput($"{vehicle.Name} has no inspection {asked}. Those there are: {string.Join(", ", known.Select(one => one.Number))}.")
            : known.LastOrDefault(one => one.IsClosed) ?? known[^1];
    }

    private static FileStream NewFile(string to)
    {
        try
        {
            return new FileStream(to, FileMode.CreateNew, FileAccess.Write);
        }
        catch (IOException) when (Path.Exists(to))
        {
            throw CommandException.BadInput($"{to} is there already, and nothing is overwritten. Name another file, or move that one away.");
        }
        catch (DirectoryNotFoundException)
        {
            throw CommandException.BadInput($"There is no folder {Path.GetDirectoryName(Path.GetFullPath(to))}. Make it first, or name another one.");
        }
    }

    /// <summary>A report that is not whole is no report: nothing is left of it.</summary>
    private static async Task WriteAsync(FileStream file, string to, Func<Task> write)
    {
        try
        {
            await write();
        }
        catch
        {
            await file.DisposeAsync();
            File.Delete(to);
            throw;
        }
    }
}
