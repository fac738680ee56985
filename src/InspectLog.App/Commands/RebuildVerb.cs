using System.CommandLine;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;

namespace InspectLog.App.Commands;

/// <summary>Makes the index again from the journals.</summary>
internal sealed class RebuildVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("The data folder.");

    public RebuildVerb(Surroundings surroundings)
        : base(
            "rebuild",
            "Make the index (lists, search, the queue of recordings to transcribe) again from the journals. Nothing is lost by it.",
            surroundings) => Add(_data);

    public override IReadOnlyList<string> Examples => ["inspectlog rebuild", "inspectlog rebuild --data /srv/garage"];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var folder = arguments.GetRequiredValue(_data);
        if (!Directory.Exists(folder))
            throw CommandException.BadInput($"There is no folder {folder}. Name the data folder with --data FOLDER.");

        using var garage = Garage.Open(
            folder, Surroundings.Time, new OpeningProgress(Surroundings.Error, Surroundings.Time), wording: SheetWording.Of);
        garage.RebuildIndex();
        Surroundings.Out.WriteLine($"The index of {Vehicles(garage)} is made again.");
        foreach (var problem in garage.Problems)
            Surroundings.Error.WriteLine(problem.Message);
        return Task.FromResult(garage.Problems.Any(problem => problem.ReadOnly) ? ExitCodes.No : ExitCodes.Done);
    }

    private static string Vehicles(Garage garage) => garage.Vehicles() is { Count: not 1 and var count }
        ? $"{count} vehicles"
        : "1 vehicle";
}
