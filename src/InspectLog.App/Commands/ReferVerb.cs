using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Refers the resistance of a copper winding to another temperature.</summary>
internal sealed class ReferVerb : Verb
{
    private readonly Option<double?> _value = StrictNumber.Option("--value", "The resistance as measured.");
    private readonly Option<Unit> _unit = UnitChoice.Option();
    private readonly WindingOptions _winding = new();
    private readonly Option<double?> _uncertainty = StrictNumber.Option("--uncertainty", "Standard uncertainty of the value, in its unit. Without it: 0.");
    private readonly Option<bool> _json = JsonLines.Option();

    public ReferVerb(Surroundings surroundings)
        : base(
            "refer",
            "Refer the resistance of a copper winding to another temperature: by the constant 235 of IEC 60034-1, unless "
                + "another one or a temperature coefficient is given.",
            surroundings)
    {
        foreach (var option in (Option[])[_value, _unit, .. _winding.All, _uncertainty, _json])
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog refer --value 8.4 --unit kΩ --at 65 --to 20",
        "inspectlog refer --value 8.4 --unit kΩ --uncertainty 0.06 --at 65 --within 5 --alpha 0.00393 --json",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var unit = arguments.GetRequiredValue(_unit);
        var value = arguments.GetValue(_value) ?? throw CommandException.BadInput("Give the resistance with --value, such as --value 8.4.");
        var temperature = _winding.Read(arguments, unit)
            ?? throw CommandException.BadInput("Give the winding's temperature with --at, such as --at 65.");
        var referred = Refer(value, arguments.GetValue(_uncertainty) ?? 0, temperature);
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(new ReferredJson(referred.Value, referred.StandardUncertainty));
        else
            Surroundings.Out.WriteLine(Text(unit.ToBase(referred.Value), unit.ToBase(2 * referred.StandardUncertainty), unit));
        return Task.FromResult(ExitCodes.Done);
    }

    private static string Text(double value, double expanded, Unit unit) =>
        expanded > 0 ? Printed.Uncertain(value, expanded, unit) : Printed.Value(value, unit);

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
