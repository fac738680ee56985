using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Decides a reading against limits. Every number, given and answered, is in the one unit named.</summary>
internal sealed class DecideVerb : Verb
{
    private readonly Option<double?> _lower = StrictNumber.Option("--lower", "Lower limit; leave out for none, or for those of the sheet.");
    private readonly Option<double?> _upper = StrictNumber.Option("--upper", "Upper limit; leave out for none, or for those of the sheet.");
    private readonly Option<Unit?> _unit = UnitChoice.Option(" With --sheet it may be left out.");
    private readonly CheckChoice _check = new();
    private readonly ReadingOptions _reading = new();
    private readonly RuleOptions _rule = new();
    private readonly PartsOptions _parts = new();
    private readonly PapersOptions _papers = new();

    private readonly Option<bool> _budget = new("--budget")
    {
        Description = "Show the uncertainty budget, and what would make a conditional answer sure.",
    };

    private readonly Option<bool> _json = JsonLines.Option();

    public DecideVerb(Surroundings surroundings)
        : base(
            "decide",
            "Decide a reading against its limits, with its measurement uncertainty (JCGM 100:2008; non-binary rule of "
                + "ILAC-G8:09/2019 unless another is chosen). All numbers are in the unit given.",
            surroundings)
    {
        foreach (var option in (Option[])[_lower, _upper, .. _check.All, _unit, .. _reading.All, .. _papers.All, .. _rule.All, .. _parts.All, _budget, _json])
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog decide --lower 0.6 --upper 2.0 --unit Ω --value 0.72 --accuracy \"0.8%+3\" --resolution 0.01",
        "inspectlog decide --lower 0.6 --unit ohm --value 0.7 --value 0.8 --accuracy \"0.8%+3\" --resolution 0.1 --json",
        "inspectlog decide --lower 1.3 --upper 1.7 --unit ohm --value 1.79 --leads 0.22 --accuracy \"0.8%+3\" --resolution 0.01 "
            + "--allow operator=0.01 --at 35 --within 5 --budget",
        "inspectlog decide --upper 3.4 --unit ohm --value 3.31 --uncertainty 0.05 --rule iso-14253-1",
        "inspectlog decide --lower 0.2 --upper 0.4 --unit mm --goes 0.30 --stops 0.35 --blade-tolerance 0.005",
        "inspectlog decide --sheet compression-leak-down --check compression --value 9.2 --accuracy \"2%+1\" --resolution 0.1",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var check = _check.Read(arguments);
        var unit = check?.UnitOf(arguments.GetValue(_unit)) ?? arguments.GetValue(_unit)
            ?? throw CommandException.BadInput("Option '--unit' is required, or a check of a sheet with --sheet and --check.");
        var decided = Decide(arguments, unit, check);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(DecisionJson.From(decided, arguments.GetValue(_budget)));
        else
            DecisionText.Write(Surroundings.Out, decided, unit, arguments.GetValue(_budget));
        return Task.FromResult(ExitCodes.Done);
    }

    private Decided Decide(ParseResult arguments, Unit unit, ChosenCheck? check)
    {
        try
        {
            var (lower, upper) = (arguments.GetValue(_lower), arguments.GetValue(_upper));
            var ofSheet = lower is null && upper is null ? check : null;
            var limits = ofSheet?.LimitsIn(unit) ?? Limits.Of(lower, upper);
            var rule = _rule.Read(arguments, check?.Sheet.Rule ?? DecisionRule.NonBinary);
            var given = _reading.Read(arguments, unit, check?.Sheet.Evaluation ?? Evaluation.Default);
            return new(given, limits, rule, ConformityRule.Decide(given.Estimate, limits, rule))
            {
                Papers = _papers.Read(arguments, DateOnly.FromDateTime(Surroundings.Time.GetLocalNow().Date)),
                LimitSource = ofSheet?.Measurand.LimitSource,
                OverParts = _parts.Read(arguments, rule, given.Estimate, limits),
            };
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
    /// <summary>How often the rule goes wrong over many parts; null where nothing was said of them.</summary>
    public GlobalRisk? OverParts { get; init; }

    /// <summary>Where the limits come from, if they are those of a sheet.</summary>
    public string? LimitSource { get; init; }

    /// <summary>What is said of the instrument.</summary>
    public required Papers Papers { get; init; }

    public IReadOnlyList<BudgetLine> Budget =>
        Given.Reading is { } reading ? BudgetTable.Of(reading, Given.Estimate.Evaluation) : BudgetTable.Of(Given.Estimate);

    public Advice Advice => Given.Reading is { } reading
        ? Measuring.Advice.For(reading, Limits, Given.Instrument, Given.Estimate.Evaluation)
        : Measuring.Advice.For(Given.Estimate, Limits);

    public bool IsAccepted => Conformity.Decision.Accepts();
}
