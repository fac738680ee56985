using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>Checks that journals are intact, by reading only.</summary>
internal sealed class VerifyVerb : Verb
{
    private readonly Option<bool> _json = JsonLines.Option();

    private readonly Argument<string> _path = new("PATH")
    {
        Description = "A data folder, a vehicle's folder in it, or a journal file.",
    };

    public VerifyVerb(Surroundings surroundings)
        : base(
            "verify",
            "Check that journals are intact: each entry's hash, the chain, and the recordings and photos they name. Nothing is written.",
            surroundings)
    {
        Add(_path);
        Add(_json);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog verify /srv/garage",
        "inspectlog verify /srv/garage/vehicles/marigold --json",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var report = Verify(arguments.GetRequiredValue(_path));
        foreach (var journal in report.Journals)
        {
            if (arguments.GetValue(_json))
                Surroundings.Out.WriteJson(JournalJson.From(journal));
            else
                Surroundings.Out.WriteJournal(journal);
        }

        return Task.FromResult(report.IsIntact ? ExitCodes.Done : ExitCodes.No);
    }

    private static VerificationReport Verify(string path)
    {
        try
        {
            return JournalVerifier.Verify(path);
        }
        catch (FileNotFoundException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }
}
