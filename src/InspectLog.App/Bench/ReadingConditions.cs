using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>The circumstances of a reading that it is corrected for: the resistance of the test leads, the
/// temperature of a copper winding, and that of the air; and what is allowed for how it was read. All may be left
/// open.</summary>
/// <param name="Leads">Resistance of the test leads in Ω, by the same instrument; null when it was not measured.</param>
/// <param name="Winding">Temperature of the winding; null when it was not given.</param>
/// <param name="Ambient">Temperature of the air about the instrument, °C; null when it was not given.</param>
/// <param name="Allowed">How far the way of reading may move it to either side, base unit; null when nothing was
/// given.</param>
public sealed record ReadingConditions(double? Leads, WindingTemperature? Winding, double? Ambient, double? Allowed)
{
    /// <summary>The temperature windings are referred to, °C.</summary>
    public const double ReferenceTemperature = 20;

    /// <summary>How far off a temperature may be where nobody says, ±°C: felt by hand, or taken as that of the air
    /// (common practice, no source).</summary>
    private const double UsualHalfWidth = 5;

    /// <summary>The fields they are typed in.</summary>
    public static readonly IReadOnlyList<string> Fields = ["leads", "temperature", "within", "ambient", "allow"];

    /// <summary>Test leads with their tips together read a few tenths of an ohm (common practice, no source).</summary>
    private static readonly PlausibleSpan PlausibleLeads = new(0, 10);

    private static readonly PlausibleSpan PlausibleAir = new(-40, 60);

    private static readonly PlausibleSpan PlausibleTemperature = new(-30, 200);

    /// <summary>Reads the fields <c>leads</c>, <c>temperature</c>, <c>within</c>, <c>ambient</c> and <c>allow</c>; what is wrong is noted on the
    /// form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="measurand">What is measured; leads count for resistances, a temperature for copper windings.</param>
    public static ReadingConditions Read(PostedForm form, Measurand measurand)
    {
        var leads = measurand.Kind == QuantityKind.Resistance
            ? Number(form, "leads", QuantityKind.Resistance, Units.Ohm, PlausibleLeads)
            : null;
        return new(leads, measurand.IsCopperWinding ? ReadWinding(form) : null, ReadAmbient(form), ReadAllowed(form, measurand));
    }

    /// <summary>Refuses test leads that the meter cannot have read so on any of its ranges: beyond them, or between two steps.
    /// </summary>
    /// <param name="form">The form.</param>
    /// <param name="instrument">The meter, on the range the value was read on.</param>
    /// <param name="others">The instruments at hand, the meter's other ranges among them.</param>
    public void RefuseUnshownLeads(PostedForm form, Instrument instrument, IEnumerable<Instrument> others)
    {
        if (Leads is not { } leads)
        {
            return;
        }

        var shown = InstrumentChoice.RangesOf(instrument, others)
            .Select(one => Shown.By(one, [new TypedNumber.Certain(leads, Units.Ohm)], InstrumentChoice.KnowsStepOf(one)))
            .ToList();
        if (!shown.Exists(one => one is Shown.Plainly))
        {
            form.Refuse("leads", shown[0] is Shown.Never never ? never.Problem : $"{((Shown.BetweenSteps)shown[0]).Question} Type what it showed.");
        }
    }

    /// <summary>A reading taken in these circumstances. What was given says so too.</summary>
    public GivenReading Of(GivenReading given) => given with
    {
        Leads = Leads,
        Winding = Winding,
        Ambient = Ambient,
        Allowed = Allowed,
        AsGiven = string.Join("; ", new[] { given.AsGiven, LeadsGiven, WindingGiven, AmbientGiven, AllowedGiven(given.Check) }.OfType<string>()),
    };

    private string? LeadsGiven => Leads is { } leads ? $"test leads {Printed.Value(leads, Units.Ohm)}" : null;

    private string? WindingGiven => Winding is { } winding
        ? string.Create(CultureInfo.InvariantCulture, $"winding at {winding.At}\u00a0°C ± {winding.HalfWidth}\u00a0°C")
        : null;

    private string? AmbientGiven => Ambient is { } air ? $"air at {Printed.Value(air, Units.Celsius)}" : null;

    private string? AllowedGiven(Check check) => Allowed is { } allowed && check.Measurand is { } measurand
        ? $"\u00b1 {Printed.UncertainNumbers(measurand.DisplayUnit.ToBase(0), allowed, measurand.DisplayUnit).Spread}\u00a0{measurand.DisplayUnit.Symbol} for the way of reading"
        : null;

    // A difference has no zero point of its own, so it is read in the unit and turned as one.
    private static double? ReadAllowed(PostedForm form, Measurand measurand)
    {
        var text = form.Text("allow");
        if (text.Length == 0)
        {
            return null;
        }

        var isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var allowed);
        if (!isNumber || !double.IsFinite(allowed) || allowed >= measurand.DisplayUnit.FromBase(measurand.Plausible.To))
        {
            form.Refuse("allow", $"Type how far the way of reading may move the value to either side, in {measurand.DisplayUnit.Symbol}, such as 0.1.");
            return null;
        }

        return measurand.DisplayUnit.DifferenceToBase(allowed);
    }

    private static double? ReadAmbient(PostedForm form)
    {
        var air = Number(form, "ambient", QuantityKind.Temperature, Units.Celsius, PlausibleAir);
        if (air is { } given && !PlausibleAir.Holds(given))
        {
            form.Refuse("ambient", "The air about a meter that works lies between −40 and 60 °C.");
        }

        return air;
    }

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
