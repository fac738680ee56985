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

    private readonly Option<double[]> _values =
        StrictNumber.RepeatedOption("--value", "A value as displayed. Give it again for each repeat of the reading.");

    private readonly Option<Accuracy> _accuracy = AccuracyOption();

    private readonly Option<double?> _resolution =
        StrictNumber.Option("--resolution", "The smallest step the instrument displays.");

    private readonly Option<double?> _goes = StrictNumber.Option("--goes", "The largest gauge that goes, in place of values.");
    private readonly Option<double?> _stops = StrictNumber.Option("--stops", "The smallest gauge that does not go.");
    private readonly Option<bool> _json = JsonLines.Option();

    public DecideVerb(Surroundings surroundings)
        : base(
            "decide",
            "Decide a reading against its limits, with its measurement uncertainty (non-binary rule of ILAC-G8:09/2019). "
                + "All numbers are in the unit given.",
            surroundings)
    {
        foreach (var option in new Option[] { _lower, _upper, _unit, _values, _accuracy, _resolution, _goes, _stops, _json })
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog decide --lower 0.6 --upper 2.0 --unit Ω --value 1.95 --accuracy \"0.8%+3\" --resolution 0.01",
        "inspectlog decide --upper 2.0 --unit ohm --value 1.9 --value 1.8 --accuracy \"0.8%+3\" --resolution 0.1 --json",
        "inspectlog decide --lower 0.2 --upper 0.4 --unit mm --goes 0.30 --stops 0.35",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var unit = arguments.GetRequiredValue(_unit);
        var reading = ReadingIn(unit, arguments);
        var (limits, conformity) = Decide(reading, InBase(unit, arguments, _lower), InBase(unit, arguments, _upper));
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(DecisionJson.From(conformity, unit));
        else
            Surroundings.Out.WriteDecision(reading, conformity, limits, unit);
        return Task.FromResult(ExitCodes.Done);
    }

    private static (Limits Limits, Conformity Conformity) Decide(Reading reading, double? lower, double? upper)
    {
        try
        {
            var limits = Limits.Of(lower, upper);
            return (limits, ConformityRule.Decide(reading, limits));
        }
        catch (ArgumentException e)
        {
            // The measuring room words these for the person who entered the numbers.
            throw CommandException.BadInput(e.Message);
        }
    }

    private Reading ReadingIn(Unit unit, ParseResult arguments)
    {
        var values = arguments.GetValue(_values) ?? [];
        return (values, InBase(unit, arguments, _goes), InBase(unit, arguments, _stops)) switch
        {
            ([], { } goes, { } stops) => new Bracket(goes, stops),
            ([], null, null) => throw CommandException.BadInput("Give the reading with --value, or with --goes and --stops."),
            ([], _, _) => throw CommandException.BadInput(
                "Give both gauges: --goes for the largest that goes, --stops for the smallest that does not."),
            (_, null, null) => Displayed(values, unit, arguments),
            _ => throw CommandException.BadInput("Give either --value or the gauges --goes and --stops, not both."),
        };
    }

    private DisplayedReading Displayed(double[] values, Unit unit, ParseResult arguments)
    {
        var accuracy = arguments.GetValue(_accuracy)
            ?? throw CommandException.BadInput("Give the instrument's accuracy with --accuracy, such as --accuracy \"0.8%+3\".");
        var resolution = InBase(unit, arguments, _resolution)
            ?? throw CommandException.BadInput("Give the smallest step the instrument displays with --resolution, such as --resolution 0.1.");
        return new DisplayedReading([.. values.Select(unit.ToBase)], accuracy, resolution);
    }

    private static double? InBase(Unit unit, ParseResult arguments, Option<double?> option) =>
        arguments.GetValue(option) is { } number ? unit.ToBase(number) : null;

    private static Option<Accuracy> AccuracyOption() => new("--accuracy")
    {
        Description = "The instrument's stated accuracy: percent of the reading plus counts of the last digit.",
        HelpName = "\"P%+N\"",
        CustomParser = result =>
        {
            if (Accuracy.TryParse(result.Tokens[0].Value, out var accuracy, out var problem))
                return accuracy;
            result.AddError(problem);
            return null;
        },
    };
}
