using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Reads a reading that is put right, and decides it anew by the rule of its inspection. The instrument it was
/// read with stays.</summary>
public static class AmendedReading
{
    /// <summary>The unit a reading is put right in: the one it is shown in.</summary>
    public static Unit UnitOf(CheckSheet sheet, ReadingDecided reading) =>
        sheet.Find(reading.Check)?.Measurand?.DisplayUnit ?? Units.BaseOf(reading.Instrument?.Kind ?? QuantityKind.Length);

    /// <summary>What stands in a field of the form before anything is typed.</summary>
    public static string Filled(CheckSheet sheet, ReadingDecided reading, string field)
    {
        var unit = UnitOf(sheet, reading);
        var displayed = reading.Reading as DisplayedReading;
        return (field, reading.Reading) switch
        {
            ("goes", Bracket bracket) => RecordWords.Editable(bracket.Goes, unit),
            ("stops", Bracket bracket) => RecordWords.Editable(bracket.Stops, unit),
            ("value", DisplayedReading { Values: var values }) =>
                string.Join("; ", values.Select(value => RecordWords.Editable(value, unit))),
            ("leads", _) => Plain(displayed?.Leads?.Values[0]),
            ("temperature", _) => Plain(displayed?.Winding?.At),
            ("within", _) => Plain(displayed?.Winding?.HalfWidth),
            ("ambient", _) => Plain(displayed?.Ambient),
            ("allow", _) => Plain(AllowedIn(displayed, unit)),
            ("unit", _) => unit.Symbol,
            ("cylinder", _) => Links.Place(reading.Cylinder),
            ("check", _) => reading.Check,
            _ => "",
        };
    }

    /// <summary>The reading as it is to be, or null with the errors noted on the form, or with what is asked first.</summary>
    public static ReadingDecided? Read(
        PostedForm form, BenchScene scene, WorkshopState workshop, long entry, ReadingDecided before, out AskedNumber? asked)
    {
        asked = null;
        var place = PlaceFields.Read(form, WithLimitsOf(scene, before));
        if (place is not null && place.Check.Measurand is null)
        {
            form.Refuse("check", "Choose a check that is measured.");
        }

        if (!form.IsValid || place is null)
        {
            return null;
        }

        var given = before.Reading is Bracket bracket
            ? BracketGiven(form, scene, before, bracket, place, out asked)
            : ValuesGiven(form, scene, workshop, before, place, out asked);
        return given is null || !form.IsValid || asked is not null ? null : Decided(form, scene, entry, given);
    }

    private static GivenReading? BracketGiven(
        PostedForm form, BenchScene scene, ReadingDecided before, Bracket was, CheckPlace place, out AskedNumber? asked)
    {
        asked = null;
        var isSame = IsAsFilled(form, scene, before, place, "goes", "stops");
        var bracket = isSame ? was : GaugeFields.Read(form, place.Check, out asked);
        return bracket is null
            ? null
            : new(place.Check, place.Cylinder, [], was with { Goes = bracket.Goes, Stops = bracket.Stops }, isSame ? before.AsGiven : Typed(form, "goes", "stops"), before.Instrument, before.From);
    }

    private static GivenReading? ValuesGiven(
        PostedForm form, BenchScene scene, WorkshopState workshop, ReadingDecided before, CheckPlace place, out AskedNumber? asked)
    {
        asked = null;
        var instrument = InstrumentOf(scene, workshop, before, place);
        var taken = before is { Reading: DisplayedReading displayed, Instrument: { } own } && IsAsFilled(form, scene, before, place, "value")
            ? new(displayed.Values, own)
            : ReadingFields.Values(form, place.Check, values => ReadOff.By(instrument, values, []), out asked);
        var conditions = ReadingConditions.Read(form, place.Check.Measurand!);
        if (taken is null)
        {
            return null;
        }

        if (!IsAsFilled(form, scene, before, place, "leads"))
        {
            conditions.RefuseUnshownLeads(form, taken.Instrument, InstrumentChoice.InUse(workshop));
        }

        var given = new GivenReading(place.Check, place.Cylinder, taken.Values, null, Typed(form, "value"), taken.Instrument, before.From);
        return IsAsFilled(form, scene, before, place, ["value", .. ReadingConditions.Fields])
            ? given with { AsGiven = before.AsGiven, Leads = conditions.Leads, Winding = conditions.Winding, Ambient = conditions.Ambient, Allowed = conditions.Allowed }
            : conditions.Of(given);
    }

    /// <summary>The instrument stays. One that chooses its range may have been on another than was taken for the value
    /// before.</summary>
    private static Instrument InstrumentOf(BenchScene scene, WorkshopState workshop, ReadingDecided before, CheckPlace place)
    {
        var measurand = place.Check.Measurand!;
        return before.Instrument is { } own && own.Kind == measurand.Kind
            ? InstrumentChoice.InUse(workshop).FirstOrDefault(one => one.Id == own.Id && one.AutoRange is true) ?? own
            : InstrumentChoice.For(measurand, workshop, Confirming.LastUsed(scene.Inspection, place.Check))[0];
    }

    private static ReadingDecided? Decided(PostedForm form, BenchScene scene, long entry, GivenReading given)
    {
        try
        {
            return ReadingRecords.Decide(scene, given, amends: entry);
        }
        catch (ArgumentException problem)
        {
            form.Refuse(given.Bracket is null ? "value" : "stops", problem.Message);
            return null;
        }
    }

    /// <summary>Whether fields are as the form came, in the unit it came in: then what was read is taken, not what is
    /// printed of it, and nothing is asked that was answered before.</summary>
    private static bool IsAsFilled(
        PostedForm form, BenchScene scene, ReadingDecided before, CheckPlace place, params IEnumerable<string> fields) =>
        UnitOf(scene.Sheet, before).Kind == place.Check.Measurand!.Kind
        && fields.Append("unit").All(field => form.Text(field) == Filled(scene.Sheet, before, field));

    /// <summary>Once an inspection is closed, its readings stay under the limits they were decided against.</summary>
    private static CheckSheet WithLimitsOf(BenchScene scene, ReadingDecided before) => scene.Inspection.IsClosed && before.With is null
        ? scene.Sheet with { Checks = [.. scene.Sheet.Checks.Select(check => check.Id == before.Check ? Limited(check, before.Limits) : check)] }
        : scene.Sheet;

    private static Check Limited(Check check, LimitsInForce? limits) => check.Measurand is not { } measurand ? check : check with
    {
        Measurand = measurand with
        {
            Limits = limits is null ? null : Limits.Of(limits.Lower, limits.Upper),
            LimitSource = limits?.Source ?? measurand.LimitSource,
        },
    };

    private static string Typed(PostedForm form, params IReadOnlyList<string> fields) => (fields.Count == 1
        ? $"{form.Text(fields[0])} {form.Text("unit")}"
        : $"{form.Text(fields[0])} goes, {form.Text(fields[1])} stops {form.Text("unit")}").Trim();

    // To ten digits: what was typed as 0.1 kΩ comes back as that.
    private static double? AllowedIn(DisplayedReading? displayed, Unit unit) =>
        displayed?.Allowances?.FirstOrDefault(one => one.Source == AllowanceSource.Method) is { } allowance
            ? double.Parse(unit.DifferenceFromBase(allowance.HalfWidth).ToString("G10", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : null;

    private static string Plain(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
