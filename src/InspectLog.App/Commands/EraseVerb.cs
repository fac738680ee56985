using System.CommandLine;
using InspectLog.App.Erasing;
using InspectLog.App.People;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Erasing;

namespace InspectLog.App.Commands;

/// <summary>Erases what is known of one person: first it lists what would go.</summary>
internal sealed class EraseVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");
    private readonly Option<string> _person = new("--person") { Description = "The person's name, as it stands in the journals: an owner, a contact, or somebody who worked here.", HelpName = "NAME", Required = true };
    private readonly Option<bool> _worker = new("--as-worker") { Description = "The name goes also where it says who worked: who inspected, who made an entry, whose device it was. What they recorded stays, without the name." };
    private readonly Option<string> _askedBy = new("--asked-by") { Description = "Who asked for it, without the name of the person: it stays in the journals.", HelpName = "TEXT", DefaultValueFactory = _ => ErasureWords.AskedBy };
    private readonly Option<string> _reason = new("--reason") { Description = "Why, without the name of the person.", HelpName = "TEXT", DefaultValueFactory = _ => ErasureWords.Reason };
    private readonly Option<string> _by = new("--by") { Description = "Who does it, for the entry that says so.", HelpName = "NAME", DefaultValueFactory = _ => PersonAtWork.Nobody };
    private readonly Option<bool> _yes = new("--yes") { Description = "Erase what is listed. Without it nothing is changed." };

    public EraseVerb(Surroundings surroundings)
        : base(
            "erase",
            "Erase what is known of one person: owner and contact, their recordings, what they kept out of reports, and their name wherever it stands. Lists what would go, and does it with --yes. It cannot be taken back.",
            surroundings)
    {
        _person.Validators.Add(given => PathGiven.RefuseEmpty(given, "--person needs a name."));
        foreach (var option in new Option[] { _data, _person, _worker, _askedBy, _reason, _by, _yes })
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog erase --person \"Ana Lindqvist\"",
        "inspectlog erase --data /srv/garage --person \"Ana Lindqvist\" --as-worker --asked-by \"the former owner, by letter\" --yes",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var folder = arguments.GetRequiredValue(_data);
        if (!Directory.Exists(folder))
            throw CommandException.BadInput($"There is no folder {folder}. Name the data folder with --data FOLDER.");
        if (PersonName.Problem(arguments.GetRequiredValue(_by)) is { } problem)
            throw CommandException.BadInput($"--by: {problem}");

        using var garage = Garage.Open(
            folder, Surroundings.Time, new OpeningProgress(Surroundings.Error, Surroundings.Time), wording: SheetWording.Of);
        try
        {
            Run(garage, arguments);
            return Task.FromResult(ExitCodes.Done);
        }
        catch (ErasureRefusedException refused)
        {
            throw new CommandException(ExitCodes.No, refused.Message, refused);
        }
        catch (JournalReadOnlyException refused)
        {
            throw new CommandException(ExitCodes.Cannot, refused.Message, refused);
        }
    }

    private void Run(Garage garage, ParseResult arguments)
    {
        var (person, asWorker) = (arguments.GetRequiredValue(_person), arguments.GetValue(_worker));
        var plan = garage.PlanErasure(person, asWorker);
        foreach (var journal in plan.Journals)
        {
            Surroundings.Out.WriteLine($"{(journal.VehicleId is null ? "The workshop's own journal" : $"{journal.Name} ({journal.VehicleId})")}:");
            foreach (var line in ErasureWords.Of(journal))
                Surroundings.Out.WriteLine($"  {line}");
        }

        Surroundings.Out.WriteLine(ErasureWords.Sum(plan));
        if (arguments.GetValue(_yes))
        {
            plan = garage.Erase(arguments.GetRequiredValue(_by), new(person, asWorker, arguments.GetRequiredValue(_askedBy), arguments.GetRequiredValue(_reason)), plan.Mark);
            Surroundings.Out.WriteLine("Erased. An entry in each of these journals says that something was, and not whose.");
        }
        else if (!plan.IsEmpty)
        {
            Surroundings.Out.WriteLine("Nothing was erased yet. To erase it for good, give the same command with --yes.");
        }

        foreach (var line in ErasureWords.Elsewhere(plan))
            Surroundings.Out.WriteLine(line);
    }
}
