using System.CommandLine;
using InspectLog.App.Archiving;
using InspectLog.App.Commands.Json;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Checking;
using InspectLog.Checks;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>Checks that journals are intact, by reading only.</summary>
internal sealed class VerifyVerb : Verb
{
    private readonly Option<bool> _json = JsonLines.Option();
    private readonly Option<string?> _head = HeadOption.Of();
    private readonly SealOptions _seals = new();

    private readonly Argument<string> _path = new("PATH")
    {
        Description = "A data folder, a vehicle's folder in it, a journal file, or an archive: its folder or ZIP.",
    };

    public VerifyVerb(Surroundings surroundings)
        : base(
            "verify",
            "Check that journals are intact: each entry's hash, the chain, the recordings and photos they name, the check sheets they were made with, the seals beside them, and in a data folder whether all vehicles are there that are noted. Copies of photos that were changed are named. An archive is checked to its last byte. Nothing is written.",
            surroundings)
    {
        _path.Validators.Add(given => PathGiven.RefuseEmpty(given, "PATH is empty: name a data folder, a vehicle's folder in it, a journal file, or an archive."));
        Add(_path);
        Add(_head);
        _seals.AddTo(this);
        Add(_json);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog verify /srv/garage",
        "inspectlog verify /srv/garage/vehicles/marigold --json",
        "inspectlog verify /srv/garage/vehicles/marigold --head 5f1c09ab5f1c09ab5f1c09ab5f1c09ab5f1c09ab5f1c09ab5f1c09ab5f1c09ab",
        "inspectlog verify /srv/archives/marigold-2026-11-25.zip",
        "inspectlog verify /srv/archives/marigold-2026-11-25 --seal /media/stick/marigold.jws",
        "inspectlog verify /srv/garage/vehicles/marigold --key \"9f86 d081 884c 7d65 9a2f eaa0 c55a d015\"",
        "inspectlog verify /srv/garage --seal /media/stick/marigold.jws",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var path = arguments.GetRequiredValue(_path);
        if (ArchiveFiles.IsArchive(path))
            return Task.FromResult(VerifyArchive(path, arguments, stop));

        var report = Verify(path);
        foreach (var journal in report.Journals)
        {
            if (arguments.GetValue(_json))
                Surroundings.Out.WriteJson(JournalJson.From(journal));
            else
            {
                Surroundings.Out.WriteJournal(journal);
                Surroundings.Out.WriteSeals(journal.Seals, _seals.Key(arguments));
            }
        }

        if (report.Folder is { } folder)
        {
            if (arguments.GetValue(_json))
                Surroundings.Out.WriteJson(FolderJson.From(folder));
            else
                Surroundings.Out.WriteFolder(folder);
        }

        var isHeld = IsHeld(arguments, HeldJournal.Of(report));
        if (!arguments.GetValue(_json) && report.Journals.Any(journal => journal.Seals.Seals.Count > 0))
            Surroundings.Out.WriteMeaning(SealWords.Meaning);
        var misfits = CopiesText.Write(Surroundings.Out, arguments.GetRequiredValue(_path), arguments.GetValue(_json));
        return Task.FromResult(report.IsIntact && isHeld && misfits == 0 ? ExitCodes.Done : ExitCodes.No);
    }

    private int VerifyArchive(string path, ParseResult arguments, CancellationToken stop)
    {
        using var tree = ArchiveFiles.Open(path);
        var found = ArchiveFiles.Check.Check(tree, stop: stop);
        var container = found.Facts is { } facts ? ArchiveCheck.FaultOfContainer(tree, facts.Info) : null;
        IReadOnlyList<BagFault> faults = container is null ? found.Faults : [.. found.Faults, container];
        var key = _seals.Key(arguments);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(ArchiveJson.From(path, faults, found.Facts, key));
        else
            Surroundings.Out.WriteArchive(path, faults, found.Facts, key);
        var isHeld = IsHeld(arguments, HeldJournal.Of(path, found.Facts));
        if (!arguments.GetValue(_json) && found.Facts?.Seals.Report.Seals.Count > 0)
            Surroundings.Out.WriteMeaning(ArchiveWords.Meaning);
        return faults.Count == 0 && found.IsIntact && isHeld ? ExitCodes.Done : ExitCodes.No;
    }

    /// <summary>Whether the journals are what was given besides. With --json the words go beside the results, so that every line
    /// of these stays JSON.</summary>
    private bool IsHeld(ParseResult arguments, IReadOnlyList<HeldJournal> journals)
    {
        var output = arguments.GetValue(_json) ? Surroundings.Error : Surroundings.Out;
        var isOfPaper = arguments.GetValue(_head) is not { } head || HeadOption.Compare(output, journals, head);
        return _seals.Hold(arguments, journals, output) && isOfPaper;
    }

    private static VerificationReport Verify(string path)
    {
        try
        {
            return JournalVerifier.Verify(path, sha256 => BuiltInSheets.FindExact(sha256) is not null);
        }
        catch (FileNotFoundException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }
}
