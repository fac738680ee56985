using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Checks.Routing;

namespace InspectLog.App.Commands;

/// <summary>Finds plug leads on the wrong towers.</summary>
internal sealed class RouteVerb : Verb
{
    private readonly Option<string> _order = Required("--firing-order", "Cylinders in the order they fire, such as 1-5-3-6-2-4.", "ORDER");
    private readonly Option<RotorTurn> _rotation = NamedChoice.Option(
        "--rotation",
        "Which way the rotor turns, seen from above: clockwise or anticlockwise (also cw, ccw, counterclockwise).",
        "WAY",
        ("clockwise", RotorTurn.Clockwise), ("cw", RotorTurn.Clockwise),
        ("anticlockwise", RotorTurn.Anticlockwise), ("anti-clockwise", RotorTurn.Anticlockwise),
        ("counterclockwise", RotorTurn.Anticlockwise), ("counter-clockwise", RotorTurn.Anticlockwise),
        ("ccw", RotorTurn.Anticlockwise), ("acw", RotorTurn.Anticlockwise));

    private readonly Option<int> _first = new("--first-tower")
    {
        Description = "The tower that serves the first cylinder of the firing order. Towers count clockwise from above.",
        HelpName = "TOWER",
        DefaultValueFactory = _ => 1,
    };

    private readonly Option<string> _found = Required("--found", "The cylinder of the lead on tower 1, 2, …, such as 1,5,3,6,4,2.", "LEADS");
    private readonly Option<bool> _json = JsonLines.Option();

    public RouteVerb(Surroundings surroundings)
        : base(
            "route",
            "Compare the leads found on a distributor cap with the firing order: which are wrong, the fewest swaps that put "
                + "them right, and what the engine does meanwhile.",
            surroundings)
    {
        _rotation.Required = true;
        foreach (var option in new Option[] { _order, _rotation, _first, _found, _json })
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
        ["inspectlog route --firing-order 1-5-3-6-2-4 --rotation clockwise --first-tower 1 --found 1,5,3,6,4,2"];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var routing = Routing(arguments);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(RoutingJson.From(routing));
        else
            foreach (var fact in CapDrawing.Of(routing).Facts)
                Surroundings.Out.WriteLine(fact);
        return Task.FromResult(ExitCodes.Done);
    }

    private LeadRouting Routing(ParseResult arguments)
    {
        try
        {
            var order = FiringOrder.Parse(arguments.GetRequiredValue(_order));
            var layout = CapLayout.Of(order, arguments.GetRequiredValue(_rotation), arguments.GetValue(_first));
            return LeadRouting.Of(layout, FiringOrder.Parse(arguments.GetRequiredValue(_found)));
        }
        catch (ArgumentException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }

    private static Option<string> Required(string name, string description, string helpName) =>
        new(name) { Description = description, HelpName = helpName, Required = true };
}
