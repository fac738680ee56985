using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>The circumstances of a reading that it is corrected for: the resistance of the test leads, and the
/// temperature of a copper winding. Both may be left open.</summary>
/// <param name="Leads">Resistance of the test leads in Ω, by the same instrument; null when it was not measured.</param>
/// <param name="Winding">Temperature of the winding; null when it was not given.</param>
public sealed record ReadingConditions(double? Leads, WindingTemperature? Winding)
{
    /// <summary>The temperature windings are referred to, °C.</summary>
    public const double ReferenceTemperature = 20;

    /// <summary>How far off a temperature may be where nobody says, ±°C: felt by hand, or taken as that of the air
    /// (common practice, no source).</summary>
    private const double UsualHalfWidth = 5;

    private static readonly string[] Fields = ["leads", "temperature", "within"];

    /// <summary>Test leads with their tips together read a few tenths of an ohm (common practice, no source).</summary>
    private static readonly PlausibleSpan PlausibleLeads = new(0, 10);

    private static readonly PlausibleSpan PlausibleTemperature = new(-30, 200);

    /// <summary>Reads the fields <c>leads</c>, <c>temperature</c> and <c>within</c>; what is wrong is noted on the
    /// form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="measurand">What is measured; leads count for resistances, a temperature for copper windings.</param>
    /// <param name="values">The values read, base unit.</param>
    public static ReadingConditions Read(PostedForm form, Measurand measurand, IReadOnlyList<double> values)
    {
        var leads = measurand.Kind == QuantityKind.Resistance
            ? Number(form, "leads", QuantityKind.Resistance, Units.Ohm, PlausibleLeads)
            : null;
        if (leads >= values.DefaultIfEmpty(double.PositiveInfinity).Min())
        {
            form.Refuse("leads", "The test leads cannot read as much as the part with them. Check both values.");
        }

        return new(leads, measurand.IsCopperWinding ? ReadWinding(form) : null);
    }

    /// <summary>The fields as they were typed, those left open not among them.</summary>
    public static IReadOnlyList<(string Name, string Text)> Typed(PostedForm form) =>
        [.. Fields.Select(field => (field, form.Text(field))).Where(one => one.Item2.Length > 0)];

    /// <summary>A reading taken in these circumstances. What was given says so too.</summary>
    public GivenReading Of(GivenReading given) => given with
    {
        Leads = Leads,
        Winding = Winding,
        AsGiven = string.Join("; ", new[] { given.AsGiven, LeadsGiven, WindingGiven }.OfType<string>()),
    };

    private string? LeadsGiven => Leads is { } leads ? $"test leads {Printed.Value(leads, Units.Ohm)}" : null;

    private string? WindingGiven => Winding is { } winding
        ? string.Create(CultureInfo.InvariantCulture, $"winding at {winding.At}\u00a0°C ± {winding.HalfWidth}\u00a0°C")
        : null;

    private static WindingTemperature? ReadWinding(PostedForm form)
    {
        if (Number(form, "temperature", QuantityKind.Temperature, Units.Celsius, PlausibleTemperature) is not { } at)
        {
            return null;
        }

        if (at < PlausibleTemperature.From || at > PlausibleTemperature.To)
        {
            form.Refuse("temperature", "The temperature of a winding lies between −30 and 200 °C.");
        }

        var text = form.Text("within");
        var isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var within);
        if (text.Length > 0 && (!isNumber || within > 100))
        {
            form.Refuse("within", "Type how many degrees it may be off, such as 5.");
        }

        return new(at, ReferenceTemperature, text.Length > 0 ? within : UsualHalfWidth);
    }

    private static double? Number(PostedForm form, string field, QuantityKind kind, Unit unit, PlausibleSpan plausible)
    {
        var text = form.Text(field);
        return text.Length == 0 ? null : form.Certain(field, TypedNumber.Read(text, kind, unit, plausible));
    }
}
