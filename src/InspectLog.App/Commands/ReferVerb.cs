using System.CommandLine;
using System.Globalization;
using InspectLog.App.Commands.Json;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Refers the resistance of a copper winding to another temperature.</summary>
internal sealed class ReferVerb : Verb
{
    private readonly Option<double?> _value = StrictNumber.Option("--value", "The resistance as measured.");
    private readonly Option<Unit> _unit = UnitChoice.RequiredOption();
    private readonly WindingOptions _winding = new();
    private readonly Option<double?> _uncertainty = StrictNumber.Option("--uncertainty", "Standard uncertainty of the value, in its unit; with --rise of each resistance. Without it: 0.");
    private readonly RiseOptions _rise = new();
    private readonly Option<bool> _json = JsonLines.Option();

    public ReferVerb(Surroundings surroundings)
        : base(
            "refer",
            "Refer the resistance of a copper winding to another temperature: by the constant 235 of IEC 60034-1, unless "
                + "another one or a temperature coefficient is given. With --rise: its temperature by what its resistance has risen.",
            surroundings)
    {
        foreach (var option in (Option[])[_value, _unit, .. _winding.All, _uncertainty, .. _rise.All, _json])
            Add(option);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog refer --value 8.4 --unit kΩ --at 65 --to 20",
        "inspectlog refer --value 8.4 --unit kΩ --uncertainty 0.06 --at 65 --within 5 --alpha 0.00393 --json",
        "inspectlog refer --rise --cold 3.00 --cold-at 20 --hot 3.60 --coolant 22 --unit Ω --accuracy \"0.5%+2\" --resolution 0.01 --within 1",
    ];

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var unit = arguments.GetRequiredValue(_unit);
        if (_rise.IsAskedFor(arguments))
        {
            Rise(arguments, unit);
            return Task.FromResult(ExitCodes.Done);
        }

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

    private void Rise(ParseResult arguments, Unit unit)
    {
        if (arguments.GetValue(_value) is not null)
            throw CommandException.BadInput("--value is for referring a resistance, and does not go with --rise.");
        if (unit.Kind != QuantityKind.Resistance)
            throw CommandException.BadInput($"{unit.Symbol} is not a unit of resistance. Use {Kinds.UnitList(QuantityKind.Resistance)}.");
        var (within, zero) = _winding.ReadForRise(arguments);
        var (temperature, rise) = Worked(() => _rise.Read(arguments, unit, arguments.GetValue(_uncertainty), within, zero));
        if (arguments.GetValue(_json))
            Surroundings.Out.WriteJson(new RiseJson(
                temperature.Value, temperature.ExpandedUncertainty, rise.Value, rise.StandardUncertainty, rise.ExpandedUncertainty));
        else
            Surroundings.Out.WriteLine($"Winding {Degrees(temperature, "°C")}, a rise of {Degrees(rise, "K")}{(rise.ExpandedUncertainty > 0 ? $" ({rise.Evaluation.CoverageText()})" : "")}.");
    }

    private static string Degrees(in Estimate estimate, string unit)
    {
        var (value, spread) = Printed.UncertainNumbers(estimate.Value, estimate.ExpandedUncertainty, Units.Celsius);
        return estimate.ExpandedUncertainty > 0 ? $"{value} {unit} ± {spread} {unit}" : $"{Math.Round(estimate.Value, 1).ToString("0.0", CultureInfo.InvariantCulture)} {unit}";
    }

    private static string Text(double value, double expanded, Unit unit) =>
        expanded > 0 ? $"{Printed.Uncertain(value, expanded, unit)} (k = 2)" : Printed.Value(value, unit);

    /// <summary>Referring is a proportion, so it may be done in the unit given.</summary>
    private static (double Value, double StandardUncertainty) Refer(double value, double uncertainty, WindingTemperature temperature) =>
        Worked(() => Copper.Refer(value, uncertainty, temperature));

    private static T Worked<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (ArgumentException e)
        {
            throw CommandException.BadInput(e.Message);
        }
    }
}
