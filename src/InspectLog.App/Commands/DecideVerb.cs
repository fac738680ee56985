using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Decides a reading against limits. Every number, given and answered, is in the one unit named.</summary>
internal sealed class DecideVerb : Verb
{
    private readonly Option<double?> _lower = StrictNumber.Option("--lower", "Lower limit; leave out for none.");
    private readonly Option<double?> _upper = StrictNumber.Option("--upper", "Upper limit; leave out for none.");
    private readonly Option<Unit> _unit = UnitChoice.Option();
    private readonly ReadingOptions _reading = new();
    private readonly RuleOptions _rule = new();

    private readonly Option<bool> _budget = new("--budget")
    {
        Description = "Show the uncertainty budget, and what would make a doubtful answer clear.",
    };

    private readonly Option<bool> _json = JsonLines.Option();

    public DecideVerb(Surroundings surroundings)
        : base(
            "decide",
            "Decide a reading against its limits, with its measurement uncertainty (JCGM 100:2008; non-binary rule of "
                + "ILAC-G8:09/2019 unless another is chosen). All numbers are in the unit given.",
            surroundings)
    {
        foreach (var option in (Option[])[_lower, _upper, _unit, .. _reading.All, .. _rule.All, _budget, _json])
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog decide --lower 0.6 --upper 2.0 --unit Ω --value 1.95 --accuracy \"0.8%+3\" --resolution 0.01",
        "inspectlog decide --upper 2.0 --unit ohm --value 1.9 --value 1.8 --accuracy \"0.8%+3\" --resolution 0.1 --json",
        "inspectlog decide --lower 1.3 --upper 1.7 --unit ohm --value 1.79 --leads 0.22 --accuracy \"0.8%+3\" --resolution 0.01 "
            + "--allow operator=0.01 --at 35 --within 5 --budget",
        "inspectlog decide --upper 3.4 --unit ohm --value 3.31 --uncertainty 0.05 --rule iso-14253-1",
        "inspectlog decide --lower 0.2 --upper 0.4 --unit mm --goes 0.30 --stops 0.35 --blade-tolerance 0.005",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var unit = arguments.GetRequiredValue(_unit);
        var decided = Decide(arguments, unit);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(DecisionJson.From(decided, arguments.GetValue(_budget)));
        else
            DecisionText.Write(Surroundings.Out, decided, unit, arguments.GetValue(_budget));
        return Task.FromResult(ExitCodes.Done);
    }

    private Decided Decide(ParseResult arguments, Unit unit)
    {
        try
        {
            var limits = Limits.Of(arguments.GetValue(_lower), arguments.GetValue(_upper));
            var rule = _rule.Read(arguments);
            var given = _reading.Read(arguments, unit);
            return new(given, limits, rule, ConformityRule.Decide(given.Estimate, limits, rule));
        }
        catch (ArgumentException e)
        {
            // The measuring room words these for the person who entered the numbers.
            throw CommandException.BadInput(e.Message);
        }
    }
}

/// <summary>A decision with what it was made from, in the unit of the command line.</summary>
internal sealed record Decided(ReadingTaken Given, Limits Limits, DecisionRule Rule, Conformity Conformity)
{
    public IReadOnlyList<BudgetLine> Budget =>
        Given.Reading is { } reading ? BudgetTable.Of(reading) : BudgetTable.Of(Given.Estimate);

    public Advice Advice => Given.Reading is { } reading
        ? Measuring.Advice.For(reading, Limits, Given.Instrument)
        : Measuring.Advice.For(Given.Estimate, Limits);

    public bool IsAccepted => Conformity.Decision is Decision.Pass or Decision.ConditionalPass;
}
