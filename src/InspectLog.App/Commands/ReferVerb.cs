using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Refers the resistance of a copper winding to another temperature.</summary>
internal sealed class ReferVerb : Verb
{
    private readonly Option<double?> _value = StrictNumber.Option("--value", "The resistance as measured.");
    private readonly Option<Unit> _unit = UnitChoice.Option();
    private readonly Option<double?> _at = StrictNumber.Option("--at", "Temperature of the winding when it was measured, °C.");
    private readonly Option<double?> _to = StrictNumber.Option("--to", "Temperature to refer it to, °C. Without it: 20.");
    private readonly Option<double?> _within = StrictNumber.Option("--within", "How far the winding's temperature may have been off, ± °C. Without it: 0.");
    private readonly Option<double?> _uncertainty = StrictNumber.Option("--uncertainty", "Standard uncertainty of the value, in its unit. Without it: 0.");
    private readonly Option<bool> _json = JsonLines.Option();

    public ReferVerb(Surroundings surroundings)
        : base("refer", "Refer the resistance of a copper winding to another temperature (IEC 60034-1, constant 235).", surroundings)
    {
        foreach (var option in new Option[] { _value, _unit, _at, _to, _within, _uncertainty, _json })
            Add(option);
    }

    public override IReadOnlyList<string> Examples => ["inspectlog refer --value 8.4 --unit kΩ --at 65 --to 20"];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var unit = arguments.GetRequiredValue(_unit);
        var value = arguments.GetValue(_value) ?? throw CommandException.BadInput("Give the resistance with --value, such as --value 8.4.");
        var at = arguments.GetValue(_at) ?? throw CommandException.BadInput("Give the winding's temperature with --at, such as --at 65.");
        if (unit.Kind != QuantityKind.Resistance)
            throw CommandException.BadInput($"{unit.Symbol} is not a unit of resistance. Use Ω, kΩ or MΩ.");

        var temperature = new WindingTemperature(at, arguments.GetValue(_to) ?? 20, arguments.GetValue(_within) ?? 0);
        var referred = Refer(value, arguments.GetValue(_uncertainty) ?? 0, temperature);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(new ReferredJson(referred.Value, referred.StandardUncertainty));
        else
            Surroundings.Out.WriteLine(Printed.Uncertain(unit.ToBase(referred.Value), unit.ToBase(2 * referred.StandardUncertainty), unit));
        return Task.FromResult(ExitCodes.Done);
    }

    /// <summary>Referring is a proportion, so it may be done in the unit given.</summary>
    private static (double Value, double StandardUncertainty) Refer(double value, double uncertainty, WindingTemperature temperature)
    {
        try
        {
            return Copper.Refer(value, uncertainty, temperature);
        }
        catch (ArgumentException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }
}
